package pairdown.scene;

/** One thing of the scene that is made of lines and labels. */
@FunctionalInterface
interface Drawable {
    void draw(Stage stage);
}

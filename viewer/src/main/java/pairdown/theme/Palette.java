package pairdown.theme;

import java.util.List;

/**
 * The colours of everything drawn, each as red, green, blue, opacity from the top byte down.
 *
 * <p>Text stands only in {@code ink} and {@code inkSoft}, on {@code paper}, {@code panel}, {@code
 * control} or {@code chosen}; each of these pairs has a contrast of at least 7. Participants'
 * colours are those of Okabe and Ito, "Color Universal Design" (2008), told apart by people with
 * any of the common kinds of colour vision; on light ground the pale ones are darkened, hue kept,
 * until a line stands out at 3 or better. A colour never says anything alone: a {@link Marker}, a
 * place or a label says it too.
 *
 * @param isDark whether light ink stands on dark paper
 * @param paper behind strips and text
 * @param panel behind panels
 * @param control behind what can be pressed
 * @param chosen behind what is switched on
 * @param edge around what can be pressed, and between parts
 * @param grid lines behind curves
 * @param ink text and figures
 * @param inkSoft what is read second
 * @param now the instant shown
 * @param matched bands of matched speeds
 * @param episode bands of tail episodes and of lost control
 * @param finding bands of exceeded limits
 * @param tolerance bands of tolerances and targets
 * @param limit lines of limits
 * @param veil over what is not to be used while something else asks
 * @param participants in the order of their numbers, gone round when there are more
 * @param sky the scene above the horizon
 * @param ground the scene's ground
 * @param groundGrid lines on the ground
 */
public record Palette(
        boolean isDark,
        int paper,
        int panel,
        int control,
        int chosen,
        int edge,
        int grid,
        int ink,
        int inkSoft,
        int now,
        int matched,
        int episode,
        int finding,
        int tolerance,
        int limit,
        int veil,
        List<Integer> participants,
        int sky,
        int ground,
        int groundGrid) {
    /** For daylight and sun. */
    public static final Palette LIGHT =
            new Palette(
                    false,
                    0xFFFFFFFF,
                    0xF1F4F6FF,
                    0xE3E9EEFF,
                    0xCFE3F2FF,
                    0x7B8893FF,
                    0xDCE2E7FF,
                    0x10151AFF,
                    0x37424CFF,
                    0x10151AFF,
                    0x009E7359,
                    0xD55E0073,
                    0xCC79A799,
                    0x56B4E933,
                    0x37424CFF,
                    0xF1F4F6E6,
                    List.of(
                            0x0072B2FF,
                            0xD55E00FF,
                            0x009E73FF,
                            0xC776A3FF,
                            0xC08400FF,
                            0x4797C5FF,
                            0x10151AFF,
                            0x9A9227FF),
                    0xDCE9F2FF,
                    0xE6E3D8FF,
                    0xB9B4A2FF);

    /** For the dark. */
    public static final Palette DARK =
            new Palette(
                    true,
                    0x10161CFF,
                    0x161E26FF,
                    0x1F2A34FF,
                    0x1E3A52FF,
                    0x6B7A87FF,
                    0x2A3641FF,
                    0xF4F6F8FF,
                    0xC3CDD6FF,
                    0xF4F6F8FF,
                    0x009E7366,
                    0xD55E0080,
                    0xCC79A780,
                    0x56B4E92E,
                    0xC3CDD6FF,
                    0x10161CE6,
                    List.of(
                            0x4A9BD9FF,
                            0xE8772EFF,
                            0x00B386FF,
                            0xDC93BCFF,
                            0xE69F00FF,
                            0x8CCDF2FF,
                            0xF4F6F8FF,
                            0xF0E442FF),
                    0x18232DFF,
                    0x23231FFF,
                    0x4B4A42FF);

    public Palette {
        participants = List.copyOf(participants);
    }

    /** This palette with participants' colours given so that a name which is a colour has it. */
    public Palette forNames(List<String> names) {
        return new Palette(
                isDark,
                paper,
                panel,
                control,
                chosen,
                edge,
                grid,
                ink,
                inkSoft,
                now,
                matched,
                episode,
                finding,
                tolerance,
                limit,
                veil,
                NamedColours.of(names, participants, isDark),
                sky,
                ground,
                groundGrid);
    }

    /** The colour of a participant by its number. */
    public int participant(int number) {
        return participants.get(Math.floorMod(number, participants.size()));
    }

    /** The same colour with another opacity, 0 to 255. */
    public static int withOpacity(int rgba, int opacity) {
        return (rgba & 0xFFFFFF00) | opacity;
    }
}

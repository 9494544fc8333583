package pairdown.gl;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.lwjgl.glfw.GLFW;

/** A key by its place on a US keyboard. */
public enum Key {
    A(GLFW.GLFW_KEY_A),
    B(GLFW.GLFW_KEY_B),
    C(GLFW.GLFW_KEY_C),
    D(GLFW.GLFW_KEY_D),
    E(GLFW.GLFW_KEY_E),
    F(GLFW.GLFW_KEY_F),
    G(GLFW.GLFW_KEY_G),
    H(GLFW.GLFW_KEY_H),
    I(GLFW.GLFW_KEY_I),
    J(GLFW.GLFW_KEY_J),
    K(GLFW.GLFW_KEY_K),
    L(GLFW.GLFW_KEY_L),
    M(GLFW.GLFW_KEY_M),
    N(GLFW.GLFW_KEY_N),
    O(GLFW.GLFW_KEY_O),
    P(GLFW.GLFW_KEY_P),
    Q(GLFW.GLFW_KEY_Q),
    R(GLFW.GLFW_KEY_R),
    S(GLFW.GLFW_KEY_S),
    T(GLFW.GLFW_KEY_T),
    U(GLFW.GLFW_KEY_U),
    V(GLFW.GLFW_KEY_V),
    W(GLFW.GLFW_KEY_W),
    X(GLFW.GLFW_KEY_X),
    Y(GLFW.GLFW_KEY_Y),
    Z(GLFW.GLFW_KEY_Z),
    DIGIT_0(GLFW.GLFW_KEY_0),
    DIGIT_1(GLFW.GLFW_KEY_1),
    DIGIT_2(GLFW.GLFW_KEY_2),
    DIGIT_3(GLFW.GLFW_KEY_3),
    DIGIT_4(GLFW.GLFW_KEY_4),
    DIGIT_5(GLFW.GLFW_KEY_5),
    DIGIT_6(GLFW.GLFW_KEY_6),
    DIGIT_7(GLFW.GLFW_KEY_7),
    DIGIT_8(GLFW.GLFW_KEY_8),
    DIGIT_9(GLFW.GLFW_KEY_9),
    F1(GLFW.GLFW_KEY_F1),
    F2(GLFW.GLFW_KEY_F2),
    F3(GLFW.GLFW_KEY_F3),
    F4(GLFW.GLFW_KEY_F4),
    F5(GLFW.GLFW_KEY_F5),
    F6(GLFW.GLFW_KEY_F6),
    F7(GLFW.GLFW_KEY_F7),
    F8(GLFW.GLFW_KEY_F8),
    F9(GLFW.GLFW_KEY_F9),
    F10(GLFW.GLFW_KEY_F10),
    F11(GLFW.GLFW_KEY_F11),
    F12(GLFW.GLFW_KEY_F12),
    SPACE(GLFW.GLFW_KEY_SPACE),
    ESCAPE(GLFW.GLFW_KEY_ESCAPE),
    ENTER(GLFW.GLFW_KEY_ENTER),
    TAB(GLFW.GLFW_KEY_TAB),
    BACKSPACE(GLFW.GLFW_KEY_BACKSPACE),
    DELETE(GLFW.GLFW_KEY_DELETE),
    INSERT(GLFW.GLFW_KEY_INSERT),
    HOME(GLFW.GLFW_KEY_HOME),
    END(GLFW.GLFW_KEY_END),
    PAGE_UP(GLFW.GLFW_KEY_PAGE_UP),
    PAGE_DOWN(GLFW.GLFW_KEY_PAGE_DOWN),
    LEFT(GLFW.GLFW_KEY_LEFT),
    RIGHT(GLFW.GLFW_KEY_RIGHT),
    UP(GLFW.GLFW_KEY_UP),
    DOWN(GLFW.GLFW_KEY_DOWN),
    COMMA(GLFW.GLFW_KEY_COMMA),
    PERIOD(GLFW.GLFW_KEY_PERIOD),
    SLASH(GLFW.GLFW_KEY_SLASH),
    SEMICOLON(GLFW.GLFW_KEY_SEMICOLON),
    APOSTROPHE(GLFW.GLFW_KEY_APOSTROPHE),
    LEFT_BRACKET(GLFW.GLFW_KEY_LEFT_BRACKET),
    RIGHT_BRACKET(GLFW.GLFW_KEY_RIGHT_BRACKET),
    BACKSLASH(GLFW.GLFW_KEY_BACKSLASH),
    MINUS(GLFW.GLFW_KEY_MINUS),
    EQUAL(GLFW.GLFW_KEY_EQUAL),
    GRAVE(GLFW.GLFW_KEY_GRAVE_ACCENT),
    PAD_0(GLFW.GLFW_KEY_KP_0),
    PAD_1(GLFW.GLFW_KEY_KP_1),
    PAD_2(GLFW.GLFW_KEY_KP_2),
    PAD_3(GLFW.GLFW_KEY_KP_3),
    PAD_4(GLFW.GLFW_KEY_KP_4),
    PAD_5(GLFW.GLFW_KEY_KP_5),
    PAD_6(GLFW.GLFW_KEY_KP_6),
    PAD_7(GLFW.GLFW_KEY_KP_7),
    PAD_8(GLFW.GLFW_KEY_KP_8),
    PAD_9(GLFW.GLFW_KEY_KP_9),
    PAD_ADD(GLFW.GLFW_KEY_KP_ADD),
    PAD_SUBTRACT(GLFW.GLFW_KEY_KP_SUBTRACT),
    PAD_ENTER(GLFW.GLFW_KEY_KP_ENTER);

    private static final Map<Integer, Key> BY_CODE = byCode();

    private final int code;

    Key(int code) {
        this.code = code;
    }

    private static Map<Integer, Key> byCode() {
        Map<Integer, Key> keys = new HashMap<>();
        Arrays.stream(values()).forEach(key -> keys.put(key.code, key));
        return keys;
    }

    static Optional<Key> ofCode(int code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}

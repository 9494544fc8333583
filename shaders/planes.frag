// Level plates: hatched, fading to the edge, so that a limit reads as one without its colour.
// In: place from the centre (m).
// Adjust: colour, hatch_m through uniforms.
#version 330 core
uniform vec4 colour;
uniform float half_m;
uniform float hatch_m;
in vec2 v_at_m;
out vec4 result;

void main() {
    float out_ = length(v_at_m) / half_m;
    if (out_ > 1.0) discard;
    float at = (v_at_m.x + v_at_m.y) / hatch_m;
    float step = max(fwidth(at), 1e-5);
    float near = abs(fract(at) - 0.5) / step;
    float hatch = clamp(1.5 - near, 0.0, 1.0) * clamp(0.33 / step - 1.0, 0.0, 1.0);
    float edge = clamp((1.0 - out_) / max(fwidth(out_) * 2.5, 1e-4), 0.0, 1.0);
    float rim = 1.0 - clamp(abs(1.0 - out_) / max(fwidth(out_) * 2.0, 1e-4) - 0.5, 0.0, 1.0);
    result = vec4(colour.rgb, colour.a * edge * (0.14 + 0.86 * max(hatch, rim)));
}

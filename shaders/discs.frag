// The propeller's disc: an even tint for forward thrust, spokes for reverse, a rim alone at idle.
// In: place on the disc (−1..1).
// Adjust: colour through a uniform; SPOKES below.
#version 330 core
const float SPOKES = 12.0;
uniform vec4 colour;
uniform float thrust; // 1 forward, 0 idle, −1 reverse
in vec2 v_at;
out vec4 result;

void main() {
    float r = length(v_at);
    if (r > 1.0 || r < 0.08) discard;
    float rim = smoothstep(0.88, 0.92, r);
    float fill = thrust > 0.5 ? 0.55 : 0.12;
    if (thrust < -0.5) {
        float spoke = fract(atan(v_at.y, v_at.x) / 6.2831853 * SPOKES);
        fill = spoke < 0.5 ? 0.75 : 0.15;
    }
    result = vec4(colour.rgb, colour.a * max(fill, rim));
}

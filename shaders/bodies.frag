// Aircraft and people: lit from above, a little from the side; a gap in the data shows as a screen.
// In: normal in world axes; surface 0 skin, 1 glass and dark parts, 2 the participant's colour.
// Adjust: skin, dark, accent colours through uniforms; LIGHT below.
#version 330 core
const vec3 LIGHT = vec3(0.35, -0.3, 0.88);
uniform vec4 skin;
uniform vec4 dark;
uniform vec4 accent;
uniform float screened; // 1 where the data have a gap
uniform float opacity;
in vec3 v_normal;
in vec3 v_place;
flat in float v_surface;
out vec4 colour;

void main() {
    if (screened > 0.5 && mod(floor(gl_FragCoord.x / 2.0) + floor(gl_FragCoord.y / 2.0), 2.0) > 0.5) discard;
    vec3 n = normalize(v_normal);
    float light = 0.72 + 0.28 * dot(n, normalize(LIGHT));
    vec3 base = v_surface < 0.5 ? skin.rgb : v_surface < 1.5 ? dark.rgb : accent.rgb;
    colour = vec4(base * light, opacity);
}

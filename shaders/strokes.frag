// Straight lines: soft edges and dashes.
// In: place across and along the line (px), look = width, dash, phase (px).
// Adjust: nothing here.
#version 330 core
in vec4 v_colour;
noperspective in float v_across_px;
noperspective in float v_along_px;
flat in vec3 v_look_px;
out vec4 colour;
#include "include/line.glsl"

void main() {
    float cover = lineCover(v_across_px, v_look_px.x);
    if (v_look_px.y > 0.0) {
        float at = mod(v_along_px + v_look_px.z, 2.0 * v_look_px.y);
        cover *= clamp(v_look_px.y - at + 0.5, 0.0, 1.0) + clamp(at - 2.0 * v_look_px.y + 0.5, 0.0, 1.0);
    }
    colour = vec4(v_colour.rgb, v_colour.a * cover);
}

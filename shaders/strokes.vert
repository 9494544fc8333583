// Straight lines of their own width, colour and dashes: ladder, sight lines, arrows, rings.
// In: ends relative to the camera (m, east north up); look = width, dash, phase (px); colour 0..1.
// Adjust: nothing here; widths and colours come with each line.
#version 330 core
layout(location = 0) in vec3 from_m;
layout(location = 1) in vec3 to_m;
layout(location = 2) in vec3 look_px;
layout(location = 3) in vec4 colour;
uniform mat4 relativeToClip;
uniform vec2 viewport_px;
out vec4 v_colour;
noperspective out float v_across_px;
noperspective out float v_along_px;
flat out vec3 v_look_px;
#include "include/line.glsl"

void main() {
    gl_Position = lineCorner(relativeToClip * vec4(from_m, 1.0), relativeToClip * vec4(to_m, 1.0),
                             look_px.x, viewport_px, gl_VertexID, v_across_px, v_along_px);
    v_colour = colour;
    v_look_px = look_px;
}

// Paths: soft edges; the colour changes once, or where bands_s is set with every such stretch of time.
// In: place across the line (px), time (s).
// Adjust: colours, fade (opacity at the oldest end), bands_s through uniforms.
#version 330 core
uniform vec4 colour;
uniform vec4 otherColour;
uniform vec2 window_s;
uniform float width_px;
uniform float fade;
uniform float bands_s;
uniform float change_s; // where the other colour begins, or a band does
noperspective in float v_across_px;
in float v_time_s;
out vec4 result;
#include "include/line.glsl"

void main() {
    float cover = lineCover(v_across_px, width_px);
    float age = clamp((v_time_s - window_s.x) / (window_s.y - window_s.x), 0.0, 1.0);
    float since = v_time_s - change_s;
    bool other = bands_s > 0.0 ? mod(floor(since / bands_s), 2.0) > 0.5 : since > 0.0;
    vec4 c = other ? otherColour : colour;
    result = vec4(c.rgb, c.a * cover * mix(fade, 1.0, age));
}

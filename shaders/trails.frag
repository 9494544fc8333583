// Paths: soft edges; where bands_s is set the shade changes with every such stretch of time.
// In: place across the line (px), time (s).
// Adjust: colour, fade (opacity at the oldest end), bands_s through uniforms.
#version 330 core
uniform vec4 colour;
uniform vec4 bandColour;
uniform vec2 window_s;
uniform float width_px;
uniform float fade;
uniform float bands_s;
uniform float phase_s;  // of the anchor in the pattern of bands
noperspective in float v_across_px;
in float v_time_s;
out vec4 result;
#include "include/line.glsl"

void main() {
    float cover = lineCover(v_across_px, width_px);
    if (cover < 0.004) discard;
    float age = clamp((v_time_s - window_s.x) / max(1e-3, window_s.y - window_s.x), 0.0, 1.0);
    vec4 c = colour;
    if (bands_s > 0.0 && mod(floor((v_time_s + phase_s) / bands_s), 2.0) > 0.5) c = bandColour;
    result = vec4(c.rgb, c.a * cover * mix(fade, 1.0, age));
}

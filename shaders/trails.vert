// Paths as lines of constant width on screen, of which only a stretch of time is drawn.
// In: a point and the next, each place relative to the stretch's anchor (m) and time (s).
// Adjust: width_px, colour, fade through uniforms.
#version 330 core
layout(location = 0) in vec4 from;
layout(location = 1) in vec4 to;
uniform mat4 relativeToClip;
uniform vec2 viewport_px;
uniform vec3 offset_m;    // the anchor relative to the camera
uniform vec2 turn;        // cosine and sine of the lead's heading; (1, 0) for world paths
uniform vec2 window_s;    // drawn from, to, on the points' time
uniform float width_px;
noperspective out float v_across_px;
out float v_time_s;
#include "include/line.glsl"

vec3 placed(vec3 p) {
    return vec3(p.x * turn.x + p.y * turn.y, p.y * turn.x - p.x * turn.y, p.z) + offset_m;
}

void main() {
    float t0 = max(from.w, window_s.x);
    float t1 = min(to.w, window_s.y);
    if (t0 >= t1) {
        gl_Position = vec4(0.0, 0.0, 2.0, 1.0);
        v_across_px = 0.0;
        v_time_s = 0.0;
        return;
    }
    float span = to.w - from.w;
    vec3 a = mix(from.xyz, to.xyz, (t0 - from.w) / span);
    vec3 b = mix(from.xyz, to.xyz, (t1 - from.w) / span);
    float along_px;
    gl_Position = lineCorner(relativeToClip * vec4(placed(a), 1.0), relativeToClip * vec4(placed(b), 1.0),
                             width_px, viewport_px, gl_VertexID, v_across_px, along_px);
    v_time_s = gl_VertexID >= 2 ? t1 : t0;
}

// Level plates seen through: the break-off height.
// In: corner (−1..1); the plate lies round centre_m with half its side in half_m.
// Adjust: nothing here.
#version 330 core
layout(location = 0) in vec3 corner;
uniform mat4 relativeToClip;
uniform vec3 centre_m; // relative to the camera
uniform float half_m;
out vec2 v_at_m;

void main() {
    v_at_m = corner.xy * half_m;
    gl_Position = relativeToClip * vec4(centre_m + vec3(v_at_m, 0.0), 1.0);
}

// The propeller's disc, tinted by the direction of thrust.
// In: corner (−1..1) of the square round the disc, in the part's own axes.
// Adjust: nothing here.
#version 330 core
layout(location = 0) in vec3 corner;
uniform mat4 relativeToClip;
uniform mat4 partToRelative;
out vec2 v_at;

void main() {
    v_at = corner.xy;
    gl_Position = relativeToClip * (partToRelative * vec4(corner.x, 0.0, corner.y, 1.0));
}

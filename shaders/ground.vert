// The ground: a wide plate under the camera, or relief.
// In: place relative to the camera (m); for relief after taking the camera off.
// Adjust: nothing here.
#version 330 core
layout(location = 0) in vec3 place_m;
layout(location = 1) in vec3 normal;
uniform mat4 relativeToClip;
uniform vec3 offset_m;  // added to places: minus the camera for relief
uniform vec3 scale;
uniform vec3 eye_m;     // the camera in the attempt's frame, less whole grid squares
out vec3 v_relative_m;
out vec2 v_grid_m;
out vec3 v_normal;

void main() {
    vec3 p = place_m * scale + offset_m;
    v_relative_m = p;
    v_grid_m = p.xy + eye_m.xy;
    v_normal = normal;
    gl_Position = relativeToClip * vec4(p, 1.0);
}

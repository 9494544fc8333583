// The ground: a grid whose lines keep their width on screen, every tenth stronger, fading to haze.
// In: place relative to the camera (m), place on the grid (m).
// Adjust: spacing_m, colours, haze_m through uniforms.
#version 330 core
uniform vec4 ground;
uniform vec4 line;
uniform vec4 sky;
uniform float spacing_m;
uniform float haze_m;   // distance at which the ground has gone half over into the sky
uniform float relief;   // 1 where the surface is lit
in vec3 v_relative_m;
in vec2 v_grid_m;
in vec3 v_normal;
out vec4 colour;

float grid(float spacing, float width_px) {
    vec2 at = v_grid_m / spacing;
    vec2 step = max(fwidth(at), vec2(1e-6));
    vec2 away = abs(fract(at - 0.5) - 0.5) / step;
    // Where lines come closer than a few pixels they melt into a tone instead of flickering.
    vec2 fade = clamp(0.33 / step - 1.0, 0.0, 1.0);
    vec2 on = clamp(0.5 * width_px + 0.5 - away, 0.0, 1.0) * fade;
    return max(on.x, on.y);
}

void main() {
    vec3 base = ground.rgb;
    if (relief > 0.5) {
        vec3 n = normalize(v_normal);
        base *= 0.72 + 0.28 * clamp(dot(n, normalize(vec3(-0.5, 0.4, 0.75))) * 1.25, 0.0, 1.0);
    }
    float on = max(0.6 * grid(spacing_m, 1.0), grid(10.0 * spacing_m, 2.0));
    base = mix(base, line.rgb, on);
    float far = length(v_relative_m);
    float haze = 1.0 - exp(-0.693 * far * far / (haze_m * haze_m));
    colour = vec4(mix(base, sky.rgb, haze), 1.0);
}

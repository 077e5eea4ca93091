//! The law of refraction: where a ray from an eye in air to a point in water passes the face between them.

/// Index of refraction of water against air, for yellow light near 20 °C.
///
/// Published: International Association for the Properties of Water and Steam, R9-97, gives 1.3330 at 20 °C and 589 nm, as
/// reported by tables of physical constants.
pub const WATER: f64 = 1.333;

/// Steps at most; a ray settles in under ten.
const STEPS: usize = 60;
/// After a step as short as this, as a share of the way, the next would be shorter than rounding: each step squares what is left.
const SETTLED: f64 = 1e-9;

/// How far along the face from the foot of the eye the ray passes it, metres.
///
/// The eye stands `near` before a flat face, the point `far` behind it, `across` apart along it. By Fermat's principle the
/// ray takes the quickest way, which is the law of refraction sin(a) = n sin(w); the root is bracketed and unique, since
/// the difference of the two sides rises with the place of passing.
pub fn passes(near: f64, far: f64, across: f64, n: f64) -> f64 {
    if across <= 0.0 || near <= 0.0 {
        return 0.0;
    }
    if far <= 0.0 {
        return across;
    }
    let (mut low, mut high) = (0.0, across);
    let mut x = across * near / (near + far / n);
    for _ in 0..STEPS {
        let rest = across - x;
        let (air, water) = ((x * x + near * near).sqrt(), (rest * rest + far * far).sqrt());
        let short = x / air - n * rest / water;
        if short < 0.0 {
            low = x
        } else {
            high = x
        }
        let steep = near * near / (air * air * air) + n * far * far / (water * water * water);
        let next = x - short / steep;
        if (next - x).abs() <= SETTLED * across {
            return next.clamp(0.0, across);
        }
        x = if next > low && next < high { next } else { 0.5 * (low + high) };
    }
    x
}

/// How deep a bed seems, seen straight down, metres: its depth over the index.
pub fn apparent_depth(depth: f64, n: f64) -> f64 {
    depth / n
}

/// Sine of the angle to the upright below the surface, for the sine of the angle above it.
pub fn below(sine_above: f64, n: f64) -> f64 {
    sine_above / n
}

/// The deepest a point `across` metres away may lie so that the way in water is no longer than `path`; nothing where no
/// depth is that near. The eye stands `height` over the surface.
///
/// The sine of the ray below the surface is sought: how far it comes above and below the surface together rises with it,
/// ever more steeply, so that Newton's steps from a sine that is too large never pass the one that is right.
pub fn deepest_within(path: f64, height: f64, across: f64, n: f64) -> f64 {
    if path <= 0.0 || height <= 0.0 {
        return 0.0;
    }
    if across <= 0.0 {
        return path;
    }
    // Neither part of the way alone may come farther than across.
    let above = across / (across * across + height * height).sqrt();
    let mut sine = (across / path).min(above / n);
    for _ in 0..STEPS {
        let level = 1.0 - n * sine * n * sine;
        let upright = level.max(f64::MIN_POSITIVE).sqrt();
        let over = height * n * sine / upright + path * sine - across;
        let next = sine - over / (height * n / (upright * level) + path);
        if next.is_nan() || next >= sine || next <= 0.0 {
            break;
        }
        sine = next;
    }
    path * (1.0 - sine * sine).sqrt()
}

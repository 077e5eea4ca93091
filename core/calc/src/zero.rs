//! Where a function of one number passes nothing.

/// The zero between two places whose surpluses differ in sign, to the last digits: false position, halving the weight
/// of an end that stays (the Illinois variant), with plain halving for a step that would leave the bracket.
pub(crate) fn crossing(surplus: impl Fn(f64) -> f64, a: (f64, f64), b: (f64, f64)) -> f64 {
    let ((mut x1, mut y1), (mut x2, mut y2)) = (a, b);
    if y1 == 0.0 {
        return x1;
    }
    if y2 == 0.0 {
        return x2;
    }
    for _ in 0..200 {
        let guess = (x1 * y2 - x2 * y1) / (y2 - y1);
        let x = if guess > x1.min(x2) && guess < x1.max(x2) { guess } else { f64::midpoint(x1, x2) };
        let y = surplus(x);
        if y == 0.0 {
            return x;
        }
        let moved = (x - x2).abs();
        if (y > 0.0) == (y2 > 0.0) {
            y1 /= 2.0;
        } else {
            (x1, y1) = (x2, y2);
        }
        (x2, y2) = (x, y);
        let close = 1e-15 * x.abs();
        if moved <= close || (x2 - x1).abs() <= close {
            break;
        }
    }
    x2
}

#[cfg(test)]
mod tests {
    use super::crossing;

    #[test]
    fn the_zero_is_found_to_the_last_digits() {
        let surplus = |x: f64| x * x - 2.0;
        let found = crossing(surplus, (0.0, surplus(0.0)), (2.0, surplus(2.0)));
        assert!((found - std::f64::consts::SQRT_2).abs() <= 4.0 * f64::EPSILON, "{found}");
        let falling = |x: f64| 1.0 - x.powi(9);
        assert!((crossing(falling, (0.0, 1.0), (3.0, falling(3.0))) - 1.0).abs() <= 4.0 * f64::EPSILON);
    }
}

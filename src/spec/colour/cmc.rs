//! CMC(l:c), written out here because the colour library has no such formula.
//!
//! Source: F. J. J. Clarke, R. McDonald, B. Rigg, *Modification to the JPC79 colour-difference
//! formula*, Journal of the Society of Dyers and Colourists 100 (1984) 128–132; the formula of
//! ISO 105-J03.

/// The difference of a sample from its standard, both as L*, a*, b*; `l` and `c` weigh lightness
/// and chroma and are above zero.
pub fn difference(standard: [f64; 3], sample: [f64; 3], l: f64, c: f64) -> f64 {
    let [l1, a1, b1] = standard;
    let [l2, a2, b2] = sample;
    let (c1, c2) = (a1.hypot(b1), a2.hypot(b2));

    let lightness = l2 - l1;
    let chroma = c2 - c1;
    // The square of the hue difference: what lightness and chroma leave over. Rounding could leave
    // less than nothing.
    let hue = ((a2 - a1).powi(2) + (b2 - b1).powi(2) - chroma.powi(2)).max(0.0);

    let s_l = if l1 < 16.0 {
        0.511
    } else {
        0.040_975 * l1 / (1.0 + 0.017_65 * l1)
    };
    let s_c = 0.0638 * c1 / (1.0 + 0.0131 * c1) + 0.638;
    let h1 = b1.atan2(a1).to_degrees().rem_euclid(360.0);
    let t = if (164.0..=345.0).contains(&h1) {
        0.56 + (0.2 * (h1 + 168.0).to_radians().cos()).abs()
    } else {
        0.36 + (0.4 * (h1 + 35.0).to_radians().cos()).abs()
    };
    let f = (c1.powi(4) / (c1.powi(4) + 1900.0)).sqrt();
    let s_h = s_c * (f * t + 1.0 - f);

    ((lightness / (l * s_l)).powi(2) + (chroma / (c * s_c)).powi(2) + hue / s_h.powi(2)).sqrt()
}

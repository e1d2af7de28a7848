// Real functions with a fixed series, so that every build gives the same bits.
//
// glibc and musl differ in the last bit of exp, log, sin and erf; only + - * / and sqrt are exact
// everywhere. These use nothing else (and no fused multiply-add: -ffp-contract=off).
#pragma once

namespace twoclocks::base {

/// e to the x.
/// Units: none. Range: x -700 to 700, clamped. Errors: relative error under 1e-14.
/// Source: Taylor series after halving by powers of two, our choice.
[[nodiscard]] double exp_fixed(double x);

/// Natural logarithm.
/// Units: none. Range: x > 0; 0 or less gives -700.
/// Errors: absolute error under 1e-14 relative to max(1, |log x|).
/// Source: atanh series on the mantissa, our choice.
[[nodiscard]] double log_fixed(double x);

/// Standard normal distribution function.
/// Units: none. Range: any. Errors: absolute error under 1e-13.
/// Source: Abramowitz and Stegun 26.2.11 (series) and 26.2.14 (continued fraction).
[[nodiscard]] double normal_cdf(double z);

/// The value that a share of a standard normal distribution lies below.
/// Units: none. Range: share above 0 and below 1; the value within -6 to 6.
/// Errors: absolute error under 1e-10. Source: halving the interval, our choice.
[[nodiscard]] double normal_quantile(double share);

/// Sine of an angle.
/// Units: radians. Range: |x| to 1e6, clamped. Errors: absolute error under 1e-12 for |x| <= 1000.
/// Source: Taylor series after reduction to a quarter turn.
[[nodiscard]] double sin_fixed(double x);

/// Cosine of an angle.
/// Units: radians. Range: |x| to 1e6, clamped. Errors: as sin_fixed.
/// Source: Taylor series after reduction to a quarter turn.
[[nodiscard]] double cos_fixed(double x);

}  // namespace twoclocks::base

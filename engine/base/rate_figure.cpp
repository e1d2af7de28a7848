#include "engine/base/rate_figure.hpp"

#include "engine/base/digit.hpp"
#include "engine/base/message_args.hpp"

namespace twoclocks::base {
namespace {

constexpr std::int32_t most_rate_digits = 9;
constexpr std::int32_t most_rate_decimals = 12;
}  // namespace

Result<RateFigure> parse_rate(std::string_view text) {
    const Problem wrong = trouble(Trouble::rate_malformed, {excerpt_arg(text)});
    if (text.empty() || !is_digit(text.front()) || !is_digit(text.back())) return wrong;
    RateFigure out;
    bool behind = false;
    std::int32_t counted = 0;
    for (const char sign : text) {
        const bool is_sign = sign == '.' || sign == ',';
        if (is_sign && !behind) {
            behind = true;
            continue;
        }
        if (!is_digit(sign)) return wrong;
        if (behind) ++out.decimals;
        if (out.digits > 0 || sign != '0') ++counted;
        if (counted > most_rate_digits || out.decimals > most_rate_decimals) return wrong;
        out.digits = out.digits * 10 + (sign - '0');
    }
    if (out.digits == 0) return wrong;
    return out;
}

}  // namespace twoclocks::base

// Lines of a record that begin with the label of their field.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/message_args.hpp"

namespace twoclocks::views {

/// Collects them; what is not there has no line.
class Labelled {
  public:
    void word(base::Word label, base::Word value) { add(label, base::word_arg(value)); }

    void text(base::Word label, const std::string& text) {
        if (!text.empty()) add(label, base::text_arg(text));
    }

    void truth(base::Word label, bool truth) {
        if (truth) word(label, base::Word::choice_yes);
    }

    void whole(base::Word label, const std::optional<std::int32_t>& value) {
        if (value) add(label, base::whole_arg(*value));
    }

    void tenths(base::Word label, const std::optional<std::int32_t>& value) {
        if (value) add(label, base::decimal_arg(*value, 1));
    }

    void thousandths(base::Word label, const std::optional<std::int32_t>& value) {
        constexpr std::int32_t decimals = 3;
        if (value) add(label, base::decimal_arg(*value, decimals));
    }

    void time(base::Word label, const std::optional<base::FlightTime>& value) {
        if (value) add(label, base::hours_used_arg(*value));
    }

    void money(base::Word label, const std::optional<base::Money>& value) {
        if (value) add(label, base::money_arg(*value));
    }

    void date(base::Word label, const std::optional<base::Date>& value) {
        if (value) add(label, base::day_arg(*value));
    }

    std::vector<base::Message> out;

  private:
    void add(base::Word label, base::Arg value) {
        out.push_back({base::Word::record_labelled, {base::word_arg(label), std::move(value)}});
    }
};

/// The word of a value of an enumeration whose values count up from 0.
/// Units: none. Errors: none. Source: our choice.
template <std::size_t Count, class T>
[[nodiscard]] base::Word word_at(const std::array<base::Word, Count>& words, T value) {
    return words.at(static_cast<std::size_t>(value));
}

}  // namespace twoclocks::views

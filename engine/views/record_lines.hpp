// Lines of a record in words, for those that say what a kind of record holds.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/count.hpp"
#include "engine/base/message_args.hpp"

namespace twoclocks::views {

/// A sentence about somebody's own words.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] inline base::Message one_text(base::Word word, const std::string& text) {
    return {word, {base::text_arg(text)}};
}

/// Lines of the fields that are there.
class Lines {
  public:
    void text(base::Word word, const std::string& text) {
        if (!text.empty()) out.push_back(one_text(word, text));
    }

    void time(base::Word word, const std::optional<base::FlightTime>& time) {
        if (time) out.push_back({word, {base::hours_used_arg(*time)}});
    }

    void whole(base::Word word, const std::optional<std::int32_t>& whole) {
        if (whole) out.push_back({word, {base::whole_arg(*whole)}});
    }

    void count(base::Word word, const std::optional<base::Count>& count) {
        if (count) out.push_back({word, {base::whole_arg(count->value)}});
    }

    void date(base::Word word, const std::optional<base::Date>& date) {
        if (date) out.push_back({word, {base::day_arg(*date)}});
    }

    void truth(base::Word word, bool truth) {
        if (truth) out.push_back({word, {}});
    }

    void source(const std::string& source, const std::string& revision) {
        out.push_back(source.empty() ? base::Message{base::Word::source_none, {}}
                                     : one_text(base::Word::record_source, source));
        text(base::Word::record_revision, revision);
    }

    std::vector<base::Message> out;
};

}  // namespace twoclocks::views

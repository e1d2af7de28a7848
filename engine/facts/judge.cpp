#include "engine/facts/judge.hpp"

#include "engine/base/message_args.hpp"
#include "engine/facts/parse.hpp"

namespace twoclocks::facts {

using base::Problem;
using base::Trouble;

void Judge::complain(Trouble code, std::string_view key) {
    Problem problem = base::trouble(code, {base::text_arg(std::string{key})});
    problem.field = key;
    problems_.push_back(std::move(problem));
}

std::string Judge::short_text(std::string_view key, const std::string& text) {
    if (text.size() > static_cast<std::size_t>(longest_text_bytes)) {
        complain(Trouble::line_text_too_long, key);
    }
    return text;
}

base::Date Judge::date_of(std::string_view key, const std::string& text) {
    const base::Result<base::Date> date = base::parse_date(text);
    if (date) return date.value();
    Problem problem = date.problems().front();
    problem.field = key;
    problems_.push_back(std::move(problem));
    return {};
}

std::optional<base::Money> Judge::money_of(std::string_view key, const std::string& text) {
    const auto money = base::parse_money(text, {});
    if (money && base::print_money(money.value()) == text) return money.value();
    Problem problem = money ? base::trouble(Trouble::money_malformed, {base::excerpt_arg(text)})
                            : money.problems().front();
    problem.field = key;
    problems_.push_back(std::move(problem));
    return std::nullopt;
}

void Judge::id_in(std::string_view key, const Json& value, base::Id& out) {
    const base::Result<base::Id> id = base::parse_id(value.text);
    if (id) {
        out = id.value();
    } else {
        complain(Trouble::fact_field_wrong, key);
    }
}

void Judge::ref_in(std::string_view key, const Json& value, Ref& out) {
    const base::Result<Ref> ref = parse_ref(value.text);
    if (ref) {
        out = ref.value();
    } else {
        complain(Trouble::fact_field_wrong, key);
    }
}

Problem newer_word(std::string_view key, const std::string& word) {
    Problem caution = base::trouble(Trouble::word_newer,
                                    {base::excerpt_arg(word), base::text_arg(std::string{key})});
    caution.field = key;
    caution.severity = base::Severity::caution;
    return caution;
}

}  // namespace twoclocks::facts

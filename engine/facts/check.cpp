#include "engine/facts/check.hpp"

#include "engine/base/message_args.hpp"
#include "engine/facts/check_care.hpp"
#include "engine/facts/check_cash.hpp"
#include "engine/facts/check_cost.hpp"
#include "engine/facts/check_limit.hpp"
#include "engine/facts/check_plan.hpp"
#include "engine/facts/fields.hpp"

namespace twoclocks::facts {
namespace {

using base::Trouble;

constexpr std::int32_t most_months = 1200;

/// Walks the field list and complains about what cannot be.
class Checker final : public FieldTeller {
  public:
    explicit Checker(base::Problems& out) : out_(out) {}

    void body(std::string_view, const std::shared_ptr<const Body>& body) override {
        if (!body) return;
        for (base::Problem& problem : check(*body))
            out_.push_back(std::move(problem));
    }

    void needed_time(std::string_view key, base::FlightTime time) override {
        if (time.seconds < 0) {
            complain(Trouble::hours_negative,
                     key,
                     base::text_arg(base::print_tenths(time, base::Round::down)));
        } else if (time > base::hours(base::most_hours)) {
            complain(Trouble::hours_absurd, key, base::hours_used_arg(time));
        }
    }

    void time(std::string_view key, const std::optional<base::FlightTime>& time) override {
        if (time) needed_time(key, *time);
    }

    void count(std::string_view key, const std::optional<base::Count>& count) override {
        if (count && (count->value < 0 || count->value > base::most_counts)) {
            complain(Trouble::count_absurd, key, base::whole_arg(count->value));
        }
    }

    void money(std::string_view key, const std::optional<base::Money>& money) override {
        if (!money) return;
        const base::Arg said = base::text_arg(base::print_money(*money));
        if (money->minor_units < 0) complain(Trouble::price_negative, key, said);
        if (money->minor_units > base::most_minor_units) complain(Trouble::money_absurd, key, said);
    }

    void months(std::string_view key, const std::optional<std::int32_t>& months) override {
        if (!months) return;
        if (*months == 0) {
            complain(Trouble::limit_zero, key, base::whole_arg(0));
        } else if (*months < 0 || *months > most_months) {
            complain(Trouble::months_absurd, key, base::whole_arg(*months));
        }
    }

    void number(std::string_view key,
                const std::optional<std::int32_t>& number,
                std::int32_t most) override {
        if (!number || (*number >= 0 && *number <= most)) return;
        base::Problem problem = base::trouble(Trouble::number_absurd,
                                              {base::whole_arg(*number), base::whole_arg(most)});
        problem.field = key;
        out_.push_back(std::move(problem));
    }

    void needed_number(std::string_view key, std::int32_t value, std::int32_t most) override {
        number(key, value, most);
    }

    void complain(Trouble code, std::string_view key, base::Arg arg) {
        base::Problem problem = base::trouble(code, {std::move(arg)});
        problem.field = key;
        out_.push_back(std::move(problem));
    }

  private:
    base::Problems& out_;
};

/// What the fields of one kind say together.
[[nodiscard]] base::Problems check_kind(const Fields& fields) {
    if (const auto* limit = std::get_if<LimitSet>(&fields)) return check_limit(*limit);
    if (const auto* permit = std::get_if<Permit>(&fields)) return check_permit(*permit);
    return check_care(fields);
}

/// How many subjects a kind names at least: the aircraft, and the meter or item.
[[nodiscard]] std::size_t subjects_needed(const Fields& fields) {
    const bool two =
        std::holds_alternative<LimitSet>(fields) || std::holds_alternative<MeterFitted>(fields) ||
        std::holds_alternative<Reading>(fields) || std::holds_alternative<ItemAdded>(fields) ||
        std::holds_alternative<ItemChanged>(fields) || std::holds_alternative<Permit>(fields) ||
        std::holds_alternative<PartFitted>(fields) || std::holds_alternative<PartRemoved>(fields);
    if (two || names_two(fields)) return 2;
    const bool any =
        std::holds_alternative<Note>(fields) || std::holds_alternative<UnknownKind>(fields);
    return any ? 0 : 1;
}

}  // namespace

base::Problems check(const Body& body) {
    base::Problems out;
    Checker checker{out};
    visit_fields(checker, body.fields);
    for (base::Problem& problem : check_kind(body.fields))
        out.push_back(std::move(problem));
    for (auto* const more : {&check_plan, &check_cost, &check_cash})
        for (base::Problem& problem : more(body))
            out.push_back(std::move(problem));
    if (body.about.size() < subjects_needed(body.fields)) {
        checker.complain(
            Trouble::about_missing, "about", base::text_arg(std::string{kind_name(body.fields)}));
    }
    if (const auto* answer = std::get_if<Answer>(&body.fields); answer && answer->settles.empty()) {
        checker.complain(Trouble::answer_empty, "settles", base::whole_arg(0));
    }
    if (const auto* flown = std::get_if<FlownAs>(&body.fields);
        flown && flown->from && *flown->from > body.on) {
        checker.complain(Trouble::flown_backwards, "from", base::whole_arg(0));
    }
    if (const auto* rebuilt = std::get_if<PartRebuilt>(&body.fields);
        rebuilt && rebuilt->document.empty()) {
        checker.complain(Trouble::rebuild_without_document, "document", base::whole_arg(0));
    }
    return out;
}

}  // namespace twoclocks::facts

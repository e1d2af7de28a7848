#include "wasm/app/limit_fields.hpp"

#include "wasm/app/record_labels.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/facts/check.hpp"
#include "engine/facts/fields.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;

constexpr std::string_view percent_key = "tolerance_permille";
constexpr std::int32_t percent_decimals = 1;

constexpr std::array usual_keys{"hours",
                                "months",
                                "landings",
                                "anchor_on",
                                "anchor_total",
                                "class",
                                "calendar_rule",
                                "source",
                                "revision"};

struct Row {
    const char* key;
    Word group;
    Word hint{Word::blank};
};

constexpr std::array rare_rows{
    Row{"starts", Word::group_intervals},
    Row{"days", Word::group_intervals, Word::hint_days},
    Row{"first_hours", Word::group_first},
    Row{"first_months", Word::group_first},
    Row{"first_days", Word::group_first, Word::hint_days},
    Row{"first_landings", Word::group_first},
    Row{"first_starts", Word::group_first},
    Row{"once", Word::group_counting},
    Row{"combine", Word::group_counting},
    Row{"in_force", Word::group_counting},
    Row{"anchor", Word::group_counting},
    Row{"anchor_landings", Word::group_counting},
    Row{"anchor_starts", Word::group_counting},
    Row{"cap_hours", Word::group_cap},
    Row{"cap_months", Word::group_cap},
    Row{"cap_days", Word::group_cap, Word::hint_days},
    Row{"cap_landings", Word::group_cap},
    Row{"cap_starts", Word::group_cap},
    Row{"tolerance_hours", Word::group_tolerance},
    Row{"tolerance_days", Word::group_tolerance},
    Row{"tolerance_permille", Word::group_tolerance},
    Row{"tolerance_cap_hours", Word::group_tolerance},
    Row{"tolerance_cap_days", Word::group_tolerance},
    Row{"carry_over", Word::group_tolerance},
    Row{"overfly_hours", Word::group_tolerance, Word::hint_overfly},
    Row{"tolerance_source", Word::group_tolerance, Word::hint_tolerance_source}};

/// What a choice is when nobody says.
[[nodiscard]] constexpr std::uint8_t usual_of(facts::Choices choices) {
    if (choices == facts::Choices::anchor) return static_cast<std::uint8_t>(facts::Anchor::release);
    if (choices == facts::Choices::carry_over)
        return static_cast<std::uint8_t>(facts::CarryOver::from_done);
    return 0;
}

/// Walks a limit and makes the field of one key.
class OneField final : public facts::FieldTeller {
  public:
    explicit OneField(std::string_view key) : key_(key) {}

    void text(std::string_view key, const std::string& text) override {
        typed(key, FieldKind::text, text);
    }

    void date(std::string_view key, const std::optional<base::Date>& date) override {
        typed(key, FieldKind::date, date ? base::print_date(*date) : std::string{});
    }

    void time(std::string_view key, const std::optional<base::FlightTime>& time) override {
        typed(key, FieldKind::hours, time ? tenths_text(*time) : std::string{});
    }

    void count(std::string_view key, const std::optional<base::Count>& count) override {
        typed(key, FieldKind::whole, count ? std::to_string(count->value) : std::string{});
    }

    void months(std::string_view key, const std::optional<std::int32_t>& months) override {
        typed(key, FieldKind::whole, months ? std::to_string(*months) : std::string{});
    }

    void number(std::string_view key,
                const std::optional<std::int32_t>& number,
                std::int32_t) override {
        if (key != percent_key) {
            months(key, number);
            return;
        }
        typed(key,
              FieldKind::decimal,
              number ? base::print_decimal(*number, percent_decimals) : std::string{});
        if (key == key_) field_.label = {Word::field_tolerance_percent, {}};
    }

    void choice(std::string_view key, facts::Choices choices, std::uint8_t value) override {
        chosen(key, option_words(choices), value, usual_of(choices));
    }

    void maybe_choice(std::string_view key,
                      facts::Choices choices,
                      std::optional<std::uint8_t> value) override {
        choice(key, choices, value.value_or(usual_of(choices)));
    }

    void truth(std::string_view key, bool is_so) override {
        chosen(key, {Word::repeat_always, Word::repeat_once}, is_so ? 1 : 0, 0);
    }

    [[nodiscard]] FieldView take() { return std::move(field_); }

  private:
    void typed(std::string_view key, FieldKind kind, std::string text) {
        if (key != key_) return;
        field_ = make_field(std::string{key}, label_of(key), kind, std::move(text), Need::optional);
    }

    void chosen(std::string_view key,
                std::vector<Word> options,
                std::int32_t option,
                std::int32_t usual) {
        if (key != key_) return;
        field_ = make_choice(std::string{key}, label_of(key), std::move(options), option);
        field_.usual = usual;
    }

    std::string_view key_;
    FieldView field_;
};

/// Walks a limit and takes what was left in each of its fields.
class LimitTaker final : public facts::FieldTaker {
  public:
    explicit LimitTaker(FieldReader& reader) : reader_(reader) {}

    void text(std::string_view key, std::string& text) override {
        if (reader_.has(key)) text = reader_.text(key);
    }

    void date(std::string_view key, std::optional<base::Date>& date) override {
        if (reader_.has(key)) date = reader_.date(key);
    }

    void time(std::string_view key, std::optional<base::FlightTime>& time) override {
        if (!reader_.has(key)) return;
        const auto told = reader_.hours(key);
        const bool same = told && time && tenths_text(*told) == tenths_text(*time);
        if (!same) time = told;
    }

    void count(std::string_view key, std::optional<base::Count>& count) override {
        if (!reader_.has(key)) return;
        const auto told = reader_.whole(key);
        count = told ? std::optional{base::Count{*told}} : std::nullopt;
    }

    void months(std::string_view key, std::optional<std::int32_t>& months) override {
        if (reader_.has(key)) months = as_small(reader_.whole(key));
    }

    void number(std::string_view key, std::optional<std::int32_t>& number, std::int32_t) override {
        if (key != percent_key) {
            months(key, number);
        } else if (reader_.has(key)) {
            number = as_small(reader_.decimal(key, percent_decimals));
        }
    }

    void choice(std::string_view key, facts::Choices, std::uint8_t& value) override {
        if (reader_.has(key)) value = static_cast<std::uint8_t>(reader_.choice(key));
    }

    /// What is usual is not written down, unless it was before.
    void maybe_choice(std::string_view key,
                      facts::Choices choices,
                      std::optional<std::uint8_t>& value) override {
        if (!reader_.has(key)) return;
        const auto told = static_cast<std::uint8_t>(reader_.choice(key));
        if (told != usual_of(choices)) {
            value = told;
        } else if (value && *value != told) {
            value.reset();
        }
    }

    void truth(std::string_view key, bool& is_so) override {
        if (reader_.has(key)) is_so = reader_.choice(key) == 1;
    }

  private:
    /// More than fits says so as the most that does, which no limit allows.
    [[nodiscard]] static std::optional<std::int32_t> as_small(
        const std::optional<std::int64_t>& number) {
        constexpr std::int64_t most = 1'000'000'000;
        if (!number) return std::nullopt;
        return static_cast<std::int32_t>(std::clamp(*number, -most, most));
    }

    FieldReader& reader_;
};

}  // namespace

FieldView limit_field(const facts::LimitSet& limit, std::string_view key) {
    OneField field{key};
    facts::visit_fields(field, limit);
    return field.take();
}

facts::LimitSet fresh_limit() {
    facts::LimitSet limit;
    limit.anchor = facts::Anchor::release;
    return limit;
}

FieldView as_more(FieldView field, Word group) {
    field.more = true;
    field.group = {group, {}};
    field.hint = {Word::blank, {}};  // how figures are written stands above already
    return field;
}

void add_usual_fields(Form& form, const facts::LimitSet& limit) {
    for (const char* key : usual_keys)
        form.fields.push_back(limit_field(limit, key));
}

void add_rare_fields(Form& form, const facts::LimitSet& limit) {
    for (const Row& row : rare_rows)
        form.fields.push_back(with_hint(as_more(limit_field(limit, row.key), row.group), row.hint));
}

void read_limit(FieldReader& reader, facts::LimitSet& limit) {
    LimitTaker taker{reader};
    facts::visit_fields(taker, limit);
}

void check_fields(FieldReader& reader, const facts::Body& body) {
    if (!reader.sound()) return;
    const auto* limit = std::get_if<facts::LimitSet>(&body.fields);
    for (base::Problem& problem : facts::check(body)) {
        const bool percent = limit != nullptr && problem.field == percent_key &&
                             problem.code == Trouble::number_absurd;
        if (percent) {
            problem = base::trouble(
                Trouble::form_percent_absurd,
                {base::decimal_arg(limit->tolerance.permille.value_or(0), percent_decimals)});
            problem.field = percent_key;
        }
        reader.complain(std::move(problem));
    }
}

void check_limit_fields(FieldReader& reader,
                        const facts::Body& body,
                        facts::ItemRole role,
                        base::Date today) {
    const auto* limit = std::get_if<facts::LimitSet>(&body.fields);
    if (limit == nullptr || !reader.sound()) return;
    check_fields(reader, body);
    if (limit->tolerance.overfly_hours && role != facts::ItemRole::inspection)
        reader.complain("overfly_hours", Trouble::form_overfly_item);
    if (limit->anchor_on && *limit->anchor_on > today) {
        reader.complain("anchor_on", Trouble::entry_day_ahead, {base::day_arg(*limit->anchor_on)});
    }
}

}  // namespace twoclocks::canvas

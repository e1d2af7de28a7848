#include "wasm/app/record_fields.hpp"

#include "wasm/app/record_labels.hpp"

#include <algorithm>

#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// Whether an aircraft is an example is not for a person to correct.
constexpr std::string_view not_asked = "invented";

/// How many decimals a number is typed with: thousandths of one, thousandths as per cent.
[[nodiscard]] std::int32_t decimals_of(std::string_view key) {
    return key.ends_with("_thousandths") ? 3 : key.ends_with("_permille") ? 1 : 0;
}

[[nodiscard]] std::string typed_share(std::int32_t number, std::int32_t decimals) {
    return decimals == 1 ? typed_tenths(number) : typed_thousandths(number);
}

/// What is copied off a plate is typed in capitals and corrected by nobody.
[[nodiscard]] FieldKind kind_of(std::string_view key) {
    const bool on_a_plate = key == "registration" || key == "serial" || key == "part_number";
    return on_a_plate ? FieldKind::code : FieldKind::text;
}

/// Walks the fields of a record and lays one out for each that a person can type.
class FieldMaker final : public facts::FieldTeller {
  public:
    FieldMaker(Form& form, base::Currency otherwise, bool is_permit)
        : form_(form), otherwise_(otherwise), is_permit_(is_permit) {}

    void needed_text(std::string_view key, const std::string& text) override {
        add(key, kind_of(key), text, Need::needed);
    }

    void text(std::string_view key, const std::string& text) override {
        add(key, kind_of(key), text, Need::optional);
    }

    void note(std::string_view key, const std::string& text) override {
        add(key, FieldKind::note, text, Need::needed);
    }

    void truth(std::string_view key, bool truth) override {
        if (key == not_asked) return;
        form_.fields.push_back(make_choice(
            std::string{key}, label_of(key), {Word::choice_no, Word::choice_yes}, truth ? 1 : 0));
    }

    void date(std::string_view key, const std::optional<base::Date>& date) override {
        add(key, FieldKind::date, date ? base::print_date(*date) : std::string{}, Need::optional);
    }

    void needed_time(std::string_view key, base::FlightTime time) override {
        add(key, FieldKind::hours, tenths_text(time), Need::needed);
    }

    void time(std::string_view key, const std::optional<base::FlightTime>& time) override {
        add(key, FieldKind::hours, time ? tenths_text(*time) : std::string{}, Need::optional);
    }

    void count(std::string_view key, const std::optional<base::Count>& count) override {
        add(key,
            FieldKind::whole,
            count ? std::to_string(count->value) : std::string{},
            Need::optional);
    }

    void months(std::string_view key, const std::optional<std::int32_t>& months) override {
        add(key,
            FieldKind::whole,
            months ? std::to_string(*months) : std::string{},
            Need::optional);
    }

    void money(std::string_view key, const std::optional<base::Money>& money) override {
        form_.fields.push_back(make_amount(std::string{key}, label_of(key), money, otherwise_));
    }

    void number(std::string_view key,
                const std::optional<std::int32_t>& number,
                std::int32_t) override {
        if (decimals_of(key) == 0) return months(key, number);
        add(key,
            FieldKind::decimal,
            number ? typed_share(*number, decimals_of(key)) : std::string{},
            Need::optional);
    }

    void needed_number(std::string_view key, std::int32_t number, std::int32_t) override {
        // A share that nobody has said yet is asked for, not proposed as none.
        const bool is_unsaid = number == 0 && key.ends_with("_permille");
        if (decimals_of(key) == 0)
            add(key, FieldKind::whole, std::to_string(number), Need::needed);
        else
            add(key,
                FieldKind::decimal,
                is_unsaid ? std::string{} : typed_share(number, decimals_of(key)),
                Need::needed);
    }

    void maybe_choice(std::string_view key,
                      facts::Choices choices,
                      std::optional<std::uint8_t> value) override {
        if (value) choice(key, choices, *value);
    }

    void choice(std::string_view key, facts::Choices choices, std::uint8_t value) override {
        form_.fields.push_back(
            make_choice(std::string{key}, label_of(key), option_words(choices), value));
    }

  private:
    void add(std::string_view key, FieldKind kind, std::string text, Need need) {
        // The reason of the record itself must not collide with the reason of its correction.
        const std::string id = key == "why" ? std::string{"own_why"} : std::string{key};
        // The last day of a permit, where a spell out of service has its first day back.
        const bool is_last_day = key == "until" && is_permit_;
        const Word label = is_last_day ? Word::field_permit_until : label_of(key);
        form_.fields.push_back(make_field(id, label, kind, std::move(text), need));
    }

    Form& form_;
    base::Currency otherwise_;
    bool is_permit_;
};

/// Walks the fields again and takes what the person left in each. A time that was not touched
/// keeps its
/// seconds, which the field shows only to the tenth.
class Corrector final : public facts::FieldTaker {
  public:
    explicit Corrector(FieldReader& reader) : reader_(reader) {}

    void needed_text(std::string_view key, std::string& text) override {
        text = reader_.text(id(key));
    }

    void text(std::string_view key, std::string& text) override { text = reader_.text(id(key)); }

    void note(std::string_view key, std::string& text) override { text = reader_.text(id(key)); }

    void truth(std::string_view key, bool& truth) override {
        if (key != not_asked) truth = reader_.choice(key) == 1;
    }

    void date(std::string_view key, std::optional<base::Date>& date) override {
        date = reader_.date(key);
    }

    void needed_time(std::string_view key, base::FlightTime& time) override {
        const auto told = reader_.hours(key);
        if (told && tenths_text(*told) != tenths_text(time)) time = *told;
    }

    void time(std::string_view key, std::optional<base::FlightTime>& time) override {
        const auto told = reader_.hours(key);
        const bool same = told && time && tenths_text(*told) == tenths_text(*time);
        if (!same) time = told;
    }

    void count(std::string_view key, std::optional<base::Count>& count) override {
        const auto told = reader_.whole(key);
        count = told ? std::optional{base::Count{*told}} : std::nullopt;
    }

    void months(std::string_view key, std::optional<std::int32_t>& months) override {
        const auto told = reader_.whole(key);
        months = told ? std::optional{static_cast<std::int32_t>(*told)} : std::nullopt;
    }

    void money(std::string_view key, std::optional<base::Money>& money) override {
        money = reader_.money(key);
    }

    void number(std::string_view key,
                std::optional<std::int32_t>& number,
                std::int32_t most) override {
        number = read(key, most);
    }

    void needed_number(std::string_view key, std::int32_t& number, std::int32_t most) override {
        if (const auto told = read(key, most)) number = *told;
    }

    void maybe_choice(std::string_view key,
                      facts::Choices choices,
                      std::optional<std::uint8_t>& value) override {
        if (value) choice(key, choices, *value);
    }

    void choice(std::string_view key, facts::Choices, std::uint8_t& value) override {
        value = static_cast<std::uint8_t>(reader_.choice(key));
    }

  private:
    [[nodiscard]] static std::string_view id(std::string_view key) {
        return key == "why" ? "own_why" : key;
    }

    /// Past what a field can hold is past what the check allows.
    [[nodiscard]] std::optional<std::int32_t> read(std::string_view key, std::int32_t most) {
        const auto told = reader_.decimal(key, decimals_of(key));
        if (!told) return std::nullopt;
        return static_cast<std::int32_t>(std::min(*told, std::int64_t{most} + 1));
    }

    FieldReader& reader_;
};

}  // namespace

void add_record_fields(Form& form, const facts::Fields& fields, base::Currency otherwise) {
    FieldMaker maker{form, otherwise, std::holds_alternative<facts::Permit>(fields)};
    facts::visit_fields(maker, fields);
}

void read_record_fields(FieldReader& reader, facts::Fields& fields) {
    Corrector corrector{reader};
    facts::visit_fields(corrector, fields);
}

}  // namespace twoclocks::canvas

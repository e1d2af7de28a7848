// Making fields and reading them back. A reader notes a problem beside the field and goes on, so
// that a
// person sees all of them at once.
#pragma once

#include "wasm/app/form.hpp"

#include "engine/base/money.hpp"

namespace twoclocks::canvas {

enum class Need : std::uint8_t { needed, optional };

[[nodiscard]] FieldView make_field(
    std::string id, base::Word label, FieldKind kind, std::string text, Need need);
[[nodiscard]] FieldView make_choice(std::string id,
                                    base::Word label,
                                    std::vector<base::Word> options,
                                    std::int32_t chosen);
/// An amount, and the list of currencies beside it.
[[nodiscard]] FieldView make_money(
    std::string id, base::Word label, std::string text, base::Currency currency, Need need);
/// The same, of an amount that may be there already.
[[nodiscard]] FieldView make_amount(std::string id,
                                    base::Word label,
                                    const std::optional<base::Money>& amount,
                                    base::Currency otherwise);
/// Puts every aircraft into a choice, by registration; `word` says its name. The form's hosts say
/// what each stands for.
void add_fleet(Form& form, FieldView& field, const FormContext& context, base::Word word);
/// Days before today that are one tap away, for a field that holds a day.
[[nodiscard]] std::vector<QuickFill> quick_days(base::Date today);
[[nodiscard]] FieldView with_hint(FieldView field, base::Word hint);
[[nodiscard]] std::string tenths_text(base::FlightTime time);

/// Thousandths as they are typed: with a zero more where they would be read two ways.
[[nodiscard]] std::string typed_thousandths(std::int64_t thousandths);

/// Tenths as they are typed.
[[nodiscard]] std::string typed_tenths(std::int64_t tenths);

/// Reads the fields of one form.
class FieldReader {
  public:
    explicit FieldReader(Form& form);
    [[nodiscard]] std::string text(std::string_view id);
    [[nodiscard]] std::optional<base::FlightTime> hours(std::string_view id);
    [[nodiscard]] std::optional<std::int64_t> whole(std::string_view id);
    /// The number times ten to the power of `decimals`.
    [[nodiscard]] std::optional<std::int64_t> decimal(std::string_view id, std::int32_t decimals);
    [[nodiscard]] std::optional<base::Money> money(std::string_view id);
    [[nodiscard]] std::optional<base::Date> date(std::string_view id);
    [[nodiscard]] std::int32_t choice(std::string_view id);
    /// Puts a problem beside the field it names, or on the form.
    void complain(base::Problem problem);
    void complain(std::string field, base::Trouble code, std::vector<base::Arg> args = {});

    /// The form has a field of that name.
    [[nodiscard]] bool has(std::string_view id) { return find_field(form_, id) != nullptr; }

    [[nodiscard]] bool sound() const { return sound_; }

  private:
    [[nodiscard]] FieldView* filled(std::string_view id);
    void refuse(FieldView& field, const base::Problem& problem);
    template <class Value>
    [[nodiscard]] std::optional<Value> taken(FieldView& field, const base::Result<Value>& result);

    Form& form_;
    bool sound_{true};
};

}  // namespace twoclocks::canvas

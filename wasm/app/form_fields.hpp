// Making fields and reading them back. A reader notes a problem beside the field and goes on, so
// that a
// person sees all of them at once.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

enum class Need : std::uint8_t { needed, optional };

[[nodiscard]] FieldView make_field(
    std::string id, base::Word label, FieldKind kind, std::string text, Need need);
[[nodiscard]] FieldView make_choice(std::string id,
                                    base::Word label,
                                    std::vector<base::Word> options,
                                    std::int32_t chosen);
[[nodiscard]] FieldView with_hint(FieldView field, base::Word hint);
[[nodiscard]] std::string tenths_text(base::FlightTime time);

/// Reads the fields of one form.
class FieldReader {
  public:
    explicit FieldReader(Form& form);
    [[nodiscard]] std::string text(std::string_view id);
    [[nodiscard]] std::optional<base::FlightTime> hours(std::string_view id);
    [[nodiscard]] std::optional<std::int64_t> whole(std::string_view id);
    [[nodiscard]] std::optional<base::Date> date(std::string_view id);
    [[nodiscard]] std::int32_t choice(std::string_view id);
    /// Puts a problem beside the field it names, or on the form.
    void complain(base::Problem problem);

    [[nodiscard]] bool sound() const { return sound_; }

  private:
    [[nodiscard]] FieldView* filled(std::string_view id);
    void refuse(FieldView& field, const base::Problem& problem);

    Form& form_;
    bool sound_{true};
};

}  // namespace twoclocks::canvas

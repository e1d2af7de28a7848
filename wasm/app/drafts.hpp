// What is being typed and not yet saved, so that a reload, a crash or a closed tab loses none of
// it. Kept by the host apart from the records, never exported.
//
// Text, a line a thing, so that a version that knows more fields can still be read by one that
// knows less of them, and what does not read at all is dropped whole.
#pragma once

#include "wasm/app/form.hpp"
#include "wasm/app/pad.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::canvas {

struct DraftField {
    std::string id;
    std::string text;    // of a choice: what the chosen option says
    bool chosen{false};  // a choice

    bool operator==(const DraftField& other) const {
        return id == other.id && text == other.text && chosen == other.chosen;
    }
};

/// One form or pad that is not finished.
struct Draft {
    std::string kind;  // of the form, or "pad"
    base::Id subject;
    base::Date on;     // the day it was last changed
    bool open{false};  // it was on the page
    std::vector<DraftField> fields;
};

/// The unfinished entries, the latest last.
class Drafts {
  public:
    /// Puts one in the place of its like, or beside the others; the oldest gives way to a seventh.
    void put(Draft draft);
    void drop(std::string_view kind, base::Id subject);
    void drop_kind(std::string_view kind);
    void close_all();
    [[nodiscard]] const Draft* find(std::string_view kind, base::Id subject) const;
    [[nodiscard]] const Draft* open() const;
    [[nodiscard]] std::string print() const;  // empty when there is none
    /// Nothing when the text is none of ours, of another version, or damaged.
    [[nodiscard]] static Drafts read(std::string_view text);

  private:
    std::vector<Draft> drafts_;
};

inline constexpr std::string_view pad_kind = "pad";

[[nodiscard]] std::string_view name_of(FormKind kind);
[[nodiscard]] std::optional<FormKind> form_kind(std::string_view name);

[[nodiscard]] Draft draft_of(const Form& form, base::Date today);
[[nodiscard]] Draft draft_of(const PadDraft& pad, base::Date today);
/// Puts what was typed into the fields that still are there.
void fill(Form& form, const Draft& draft);
void fill(PadDraft& pad, const Draft& draft);
/// A person typed or chose something that a fresh form does not have.
[[nodiscard]] bool is_touched(const Form& form, const Form& fresh);

}  // namespace twoclocks::canvas

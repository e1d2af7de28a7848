// Words on the page: headings, paragraphs, sentences that answer "Why?", the words of a state.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <string>
#include <string_view>

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// Wrapped in the column, spoken as text.
void paragraph(Ui& ui, Type type, Tone tone, std::string_view text);
/// Wrapped in the column, drawn only: its words are spoken by something else.
void quiet_paragraph(Ui& ui, Type type, Tone tone, std::string_view text);
void heading(Ui& ui, std::int32_t level, std::string_view text);

/// Height of a wrapped text.
[[nodiscard]] float height_of(Ui& ui, Type type, std::string_view text, float width);

/// Words, and whether another answer to an open question would change them.
struct Said {
    std::string text;
    bool questioned{false};
};

[[nodiscard]] Said said(Ui& ui, const views::Figure& figure);
[[nodiscard]] Said said(Ui& ui, const views::Told& told);
/// As they are spoken, or drawn where no sign can stand: "1,044.0 h, records disagree".
[[nodiscard]] std::string in_words(Ui& ui, const Said& said);

/// The sign of a questioned figure: a question mark in a ring. `left` is on the middle of the line.
void question_sign(Pen& pen, Point left);
/// What it takes beside words, with the space before it; nothing when they are not questioned.
[[nodiscard]] float sign_room(Pen& pen, bool questioned);

/// A sentence that opens its explanation: "Why?" is underlined behind it. True when tapped.
[[nodiscard]] bool answer_link(
    Ui& ui, const std::string& id, Type type, Tone tone, const Said& said);
/// A sentence underlined as a whole, at least a finger high. True when tapped.
[[nodiscard]] bool line_link(Ui& ui, const std::string& id, Type type, Tone tone, const Said& said);

/// The underline of what can be tapped.
void underline(Pen& pen, Type type, Tone tone, Point top_left, float width);

/// The state in words: inverted when it stops the aircraft, outlined when something must be done,
/// plain when nothing must. Right edge at `top_right`; returns its box.
Rect state_chip(Pen& pen, views::State state, std::string_view word, Point top_right);
[[nodiscard]] float state_chip_width(Pen& pen, std::string_view word);

/// The largest of the types in which every text fits the width.
[[nodiscard]] Type fitting_type(Pen& pen,
                                std::initializer_list<Type> types,
                                std::initializer_list<std::string_view> texts,
                                float width);

/// An arrow that says that a row opens something; `tip` is its point.
void forward_arrow(Pen& pen, Point tip);

/// The short caution that stands on every page.
void caution_line(Ui& ui);

}  // namespace twoclocks::canvas

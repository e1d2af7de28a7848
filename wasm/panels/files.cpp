#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/question_card.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

struct LookChoice {
    ThemeChoice choice;
    const char* id;
    Word label;
};

constexpr std::array<LookChoice, 4> looks{{{ThemeChoice::system, "look-system", Word::look_system},
                                           {ThemeChoice::paper, "look-paper", Word::look_paper},
                                           {ThemeChoice::night, "look-night", Word::look_night},
                                           {ThemeChoice::sun, "look-sun", Word::look_sun}}};

/// The page while it is drawn: what it shows and what was pressed.
class Files {
  public:
    Files(Ui& ui, const FilesPage& view) : ui_(ui), view_(view) {}

    void narrow() {
        preview();
        journal();
        imports();
        storage();
        signature();
        look();
        caution_line(ui_);
    }

    void wide() {
        preview();
        ui_.side_by_side(
            page::half,
            space::block,
            [&] {
                journal();
                imports();
            },
            [&] {
                storage();
                signature();
                look();
            });
        caution_line(ui_);
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    static constexpr std::size_t most_shown = 8;  // disagreements of a file

    void title(Word word) {
        heading(ui_, 2, ui_.say(word));
        ui_.gap(space::small);
    }

    void words(Type type, Tone tone, const base::Message& message) {
        paragraph(ui_, type, tone, ui_.say(message));
    }

    void journal() {
        title(Word::files_journal);
        card(ui_, [&] {
            words(Type::body_strong, Tone::ink, view_.summary);
            words(Type::body, Tone::soft, view_.last_export);
            words(Type::body, Tone::ink, view_.not_copied);
            const std::string print = ui_.say(view_.fingerprint);
            words(Type::small, Tone::soft, {Word::files_fingerprint, {base::text_arg(print)}});
            ui_.gap(space::base);
            const std::string out = ui_.say(Word::button_export);
            const bool pressed = view_.preview ? quiet_button(ui_, "export", out)
                                               : primary_button(ui_, "export", out);
            if (pressed) answer_ = intent::ExportJournal{};
            ui_.gap(space::middle);
            if (quiet_button(ui_, "import", ui_.say(Word::button_import))) {
                answer_ = intent::ChooseFile{};
            }
            ui_.gap(space::middle);
            if (quiet_button(ui_, "share", ui_.say(Word::button_share)))
                answer_ = intent::OpenForm{FormKind::share, {}};
            more_in();
        });
        ui_.gap(space::block);
    }

    /// Rows of other people's tables.
    void more_in() {
        ui_.gap(space::middle);
        const std::int32_t pressed =
            button_row(ui_,
                       {{"readings-table", ui_.say(Word::button_readings_table)},
                        {"parts-table", ui_.say(Word::button_parts_table)}});
        if (pressed == 0) answer_ = intent::OpenForm{FormKind::readings_table, {}};
        if (pressed == 1) answer_ = intent::OpenForm{FormKind::parts_table, {}};
    }

    void preview() {
        if (!view_.preview) return;
        const ImportPreview& preview = *view_.preview;
        title(Word::files_preview);
        card(ui_, [&] {
            paragraph(ui_, Type::small, Tone::soft, preview.file_name);
            words(Type::body_strong, Tone::ink, preview.summary);
            for (const base::Message& change : preview.changes) {
                ui_.gap(space::tight);
                words(Type::body, Tone::ink, change);
            }
            disagreements(preview);
            for (const base::Problem& problem : preview.problems) {
                ui_.gap(space::middle);
                problem_note(ui_, problem);
            }
            if (preview.read_only) {
                ui_.gap(space::middle);
                words(Type::body, Tone::ink, {Word::files_read_only_import, {}});
            }
            ui_.gap(space::base);
            preview_buttons(preview);
        });
        ui_.gap(space::block);
    }

    void disagreements(const ImportPreview& preview) {
        if (preview.disagreements.empty()) return;
        const std::size_t shown = std::min(preview.disagreements.size(), most_shown);
        for (std::size_t place = 0; place < shown; ++place) {
            const Disagreement& one = preview.disagreements[place];
            ui_.gap(space::base);
            words(Type::answer, Tone::ink, one.about);
            question_ahead(ui_, one.question);
        }
        const auto more = static_cast<std::int64_t>(preview.disagreements.size() - shown);
        ui_.gap(space::middle);
        if (more > 0)
            words(Type::body_strong,
                  Tone::ink,
                  {Word::import_disagrees_more, {base::whole_arg(more)}});
        if (preview.can_accept) words(Type::body, Tone::ink, {Word::import_leave_open, {}});
    }

    void preview_buttons(const ImportPreview& preview) {
        if (preview.can_accept) {
            if (primary_button(ui_, "accept-import", ui_.say(Word::button_accept_import))) {
                answer_ = intent::AcceptImport{};
            }
            ui_.gap(space::middle);
        }
        if (quiet_button(ui_, "drop-import", ui_.say(Word::button_drop_import))) {
            answer_ = intent::DropImport{};
        }
    }

    void imports() {
        title(Word::files_imports);
        if (view_.batches.empty()) words(Type::body, Tone::soft, {Word::files_imports_none, {}});
        for (const BatchView& batch : view_.batches) {
            card(ui_, [&] {
                paragraph(ui_, Type::body_strong, Tone::ink, batch.file_name);
                words(Type::body, Tone::soft, batch.detail);
                if (batch.aside) words(Type::body_strong, Tone::ink, {Word::files_aside, {}});
                ui_.gap(space::middle);
                batch_button(batch);
            });
            ui_.gap(space::middle);
        }
        ui_.gap(space::base);
    }

    void batch_button(const BatchView& batch) {
        const std::string id = "batch-" + std::to_string(batch.number);
        const Word label = batch.aside ? Word::button_take_back : Word::button_set_aside;
        if (!quiet_button(ui_, {id, ui_.say(label), true, batch.file_name})) return;
        if (batch.aside)
            answer_ = intent::TakeBack{batch.number};
        else
            answer_ = intent::SetAside{batch.number};
    }

    void storage() {
        title(Word::heading_storage);
        for (const base::Message& line : view_.storage) {
            words(Type::body, Tone::ink, line);
            ui_.gap(space::tight);
        }
        ui_.gap(space::block);
    }

    void signature() {
        title(Word::files_signature);
        words(Type::body, Tone::ink, view_.author);
        ui_.gap(space::middle);
        if (quiet_button(ui_, "signature", ui_.say(Word::button_signature))) {
            answer_ = intent::OpenForm{FormKind::author, {}};
        }
        ui_.gap(space::block);
    }

    void look() {
        title(Word::files_look);
        std::vector<ChoiceSpec> choices;
        choices.reserve(looks.size());
        for (const LookChoice& look : looks) {
            choices.push_back({look.id, ui_.say(look.label), view_.theme == look.choice});
        }
        const std::int32_t chosen = choice_list(ui_, choices);
        if (chosen >= 0) {
            answer_ = intent::SetTheme{looks[static_cast<std::uint32_t>(chosen)].choice};
        }
        ui_.gap(space::wide);
        words(
            Type::body_strong, Tone::ink, {Word::text_size, {base::whole_arg(view_.text_percent)}});
        words(Type::small, Tone::soft, {Word::text_pinch, {}});
        ui_.gap(space::small);
        const std::int32_t size = view_.text_percent;
        const std::int32_t pressed =
            button_row(ui_,
                       {{"text-smaller", ui_.say(Word::text_smaller), size > text_sizes.front()},
                        {"text-larger", ui_.say(Word::text_larger), size < text_sizes.back()},
                        {"keys", ui_.say(Word::keys_title)}});
        if (pressed == 0) answer_ = intent::SetTextSize{text_size_beside(size, -1)};
        if (pressed == 1) answer_ = intent::SetTextSize{text_size_beside(size, 1)};
        if (pressed == 2) answer_ = intent::OpenKeys{};
        ui_.gap(space::base);
    }

    Ui& ui_;
    const FilesPage& view_;
    Answer answer_;
};

}  // namespace

Answer files_panel(Ui& ui, const Rect& area, const FilesPage& view) {
    Files files{ui, view};
    page_body(ui, area, {"files"}, [&] {
        if (ui.roomy())
            files.wide();
        else
            files.narrow();
    });
    return files.answer();
}

}  // namespace twoclocks::canvas

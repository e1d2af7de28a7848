// What AppState holds, and the four things it does: remember pages, save, answer intents, make
// screens.
// One file each: app_state.cpp (calls from outside), app/apply.cpp, app/saving.cpp,
// app/screens.cpp.
#pragma once

#include "wasm/app/checks.hpp"
#include "wasm/app/drafts.hpp"
#include "wasm/app/form.hpp"
#include "wasm/app/import.hpp"
#include "wasm/app/ledger.hpp"
#include "wasm/app/lives.hpp"
#include "wasm/app/on_return.hpp"
#include "wasm/app/pad.hpp"
#include "wasm/app/parts.hpp"
#include "wasm/app/signer.hpp"
#include "wasm/app_state.hpp"

#include <map>
#include <vector>

#include "engine/views/make_views.hpp"
#include "engine/views/money.hpp"
#include "engine/views/plan.hpp"
#include "engine/views/routes.hpp"
#include "engine/views/stagger_view.hpp"

namespace twoclocks::canvas {

/// Which page, and about what.
struct Place {
    enum class Kind : std::uint8_t {
        fleet,
        aircraft,
        log,
        pad,
        history,
        files,
        form,
        specimen,
        checks,
        status,
        on_return,
        sure,
        plan,
        routes,
        stagger,
        money,
        sums,
        parts,
        part
    };
    Kind kind{Kind::fleet};
    base::Id subject;
    views::SumsOf of{views::SumsOf::cores};  // of Kind::sums
};

/// Something handed to the host and not yet acknowledged.
struct Pending {
    std::string segment;
    enum class After : std::uint8_t {
        stay,
        aircraft,
        leave_form,
        template_part,
        stay_on_files
    } after{After::stay};
    base::Id aircraft;
    base::Message done;
    std::vector<base::Id> taken_back_by_tap{};  // what the notice offers to take back
    std::string draft_kind{};                   // the draft it was, empty for none
    base::Id draft_subject{};
};

/// What belongs to what is being typed, beside the form and the pad themselves.
struct Entry {
    Form fresh;  // the form as it opened
    std::optional<Form> cleared;
    std::optional<PadDraft> cleared_pad;
    Drafts drafts;
    std::string kept;        // what the host has
    std::string file_field;  // the field that waits for a file
    bool is_opening{false};  // a locked file is with the host
    base::Message note{base::Word::blank, {}};
};

/// What is known of where the records are kept, and of the last copy that was made.
struct Kept {
    std::string last_export;                       // day, YYYY-MM-DD; empty: never
    std::optional<std::int64_t> exported_at_ms{};  // when that was
    std::optional<bool> promised{};                // the browser's answer; none: not asked yet
    std::optional<std::int64_t> used_bytes{};
    std::optional<std::int64_t> room_bytes{};
};

struct AppState::Inside {
    explicit Inside(Host& the_host) : host(the_host) {}

    // --- what outside told
    Host& host;
    base::Region region;
    Signer signer;
    std::int64_t wall_ms{0};
    base::Date today;
    bool is_loaded{false};
    bool two_panes{false};
    bool is_online{true};
    bool is_read_only{false};
    bool caution_accepted{false};
    bool has_new_version{false};
    ThemeChoice theme{ThemeChoice::system};
    std::int32_t text_percent{text_sizes.front()};
    bool single_keys{true};  // letters without a modifier are shortcuts
    Kept kept;

    // --- what is recorded, and what follows from it
    Ledger ledger;
    std::map<base::Id, views::Assessed> fleet;
    // The ones looked at last, while nothing changes.
    Lives lives;
    bool in_slices{false};  // frames come, and a page may be made over several of them
    std::optional<views::PlanView> planned;
    std::optional<views::RoutesView> routes;
    std::optional<views::StaggerView> staggered;
    std::optional<views::MoneyView> costed;
    std::optional<views::SumsView> summed;
    std::optional<std::vector<timeline::PartState>> worked_out;  // parts, when they were asked for

    // --- where the person is
    std::vector<Place> places{Place{}};
    PadDraft pad;
    Form form;
    Form checks{make_checks_form()};  // what was asked of the list of checks
    Form parts_asked;                 // and of the list of parts
    Form return_asked;                // and the day of a return to service
    Form tried;                       // and the hours a month that are tried
    Form sale_asked;                  // and the hours a year that a buyer flies
    Form weighed;                     // and what days and hours may be worth; no field: closed
    Entry entry;
    std::optional<Import> import;
    Sheet sheet;
    std::vector<Notice> notices;
    std::map<base::Word, std::int64_t> alarms;  // of the store, until they are dismissed

    // --- what is being saved
    std::map<std::uint32_t, Pending> pending;
    std::uint32_t last_token{0};
    std::int32_t segments_since_snapshot{0};
    bool has_unread{false};  // stored lines that this version cannot read

    Screen screen;
    bool dirty{true};

    // --- pages
    [[nodiscard]] Place& here() { return places.back(); }

    /// The fields that are on the page.
    [[nodiscard]] Form& typed() {
        if (here().kind == Place::Kind::parts) return parts_asked;
        if (here().kind == Place::Kind::on_return) return return_asked;
        if (here().kind == Place::Kind::sure) return tried;
        if (here().kind == Place::Kind::plan) return weighed;
        if (here().kind == Place::Kind::sums) return sale_asked;
        return here().kind == Place::Kind::checks ? checks : form;
    }

    /// A list that is searched or a figure that is tried, not a form that is filled in.
    [[nodiscard]] bool asks() {
        return here().kind == Place::Kind::checks || here().kind == Place::Kind::parts ||
               here().kind == Place::Kind::on_return || here().kind == Place::Kind::sure ||
               here().kind == Place::Kind::plan || here().kind == Place::Kind::sums;
    }

    void open(Place place);
    void replace(Place place);
    void close();

    // --- what is being typed (app/entry.cpp)
    void open_form(FormKind kind, base::Id subject);
    void open_pad(base::Id aircraft);
    void type(std::string_view field_id, std::string_view text);
    void end_field(std::string_view field_id);
    void choose(const std::string& field_id, std::int32_t option);
    void toggle(const std::string& field_id);
    void clear_entry();
    void undo_clear();
    [[nodiscard]] bool take_field_file(std::string_view name, std::string_view bytes);
    void keep_drafts();
    void restore_draft(std::string_view stored);
    void draft_saved(const Pending& saved);

    // --- saving (app/saving.cpp)
    void save_facts(const std::vector<facts::Fact>& facts, Pending pending_save);
    void save_segment(Pending pending_save);
    void acknowledge(std::uint32_t token, bool ok, std::string_view reason);
    base::Problems take_in(std::string_view segment);
    void maybe_snapshot();
    void lead_to_aircraft(base::Id aircraft);
    void start_template(base::Id aircraft);
    void lead_on_template();
    void notify(base::Message text, bool urgent = false);
    /// Something about the store, with how many times: it stays beside what else is said.
    void alarm(base::Word what, std::int64_t count);

    // --- what follows from what is recorded
    void reassess();
    void reassess(base::Id aircraft);
    [[nodiscard]] const views::Assessed* assessed(base::Id aircraft) const;
    [[nodiscard]] std::vector<views::Assessed> fleet_list() const;
    /// Every part, worked out when it is first asked for.
    [[nodiscard]] const std::vector<timeline::PartState>& parts();
    /// Null when there is none of that id.
    [[nodiscard]] const timeline::PartState* part(base::Id id);

    // --- intents (app/apply.cpp)
    void apply(const Intent& intent);

    // --- screens (app/screens.cpp)
    void make_screen();
    /// The campaigns that the page here is made from.
    [[nodiscard]] std::vector<LifeAsked> lives_asked() const;
    [[nodiscard]] FormContext context_of(base::Id subject);
};

/// Settles a question of the aircraft or part on the page.
void answer_question(AppState::Inside& in, const intent::AnswerQuestion& asked);

/// The page of files.
[[nodiscard]] FilesPage files_page(const AppState::Inside& in);

/// That what was written here is in no file yet, when that is much or long ago; else word `blank`.
[[nodiscard]] base::Message copy_reminder(const AppState::Inside& in);

/// Hands the whole visible journal over as a file, from memory.
void export_journal(AppState::Inside& in);

using Inside = AppState::Inside;

}  // namespace twoclocks::canvas

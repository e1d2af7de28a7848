// What each intent does. One function an intent: a new place, a new fact, or a call to the host.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/inside.hpp"
#include "wasm/app/money.hpp"
#include "wasm/app/papers.hpp"
#include "wasm/app/plan.hpp"
#include "wasm/app/sharing.hpp"
#include "wasm/app/sums.hpp"
#include "wasm/app/sure.hpp"
#include "wasm/app/undo.hpp"
#include "wasm/theme.hpp"

#include "engine/base/message_args.hpp"
#include "engine/facts/print.hpp"
#include "engine/views/record.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// Looks and names that stay on this device, by the names the host keeps them under.
/// Answers intents. Every overload changes places, drafts or asks the host; none edits a fact.
struct Apply {
    Inside& in;

    void operator()(const intent::OpenFleet&) const { in.open({Place::Kind::fleet, {}}); }

    void operator()(const intent::OpenLog&) const {
        if (in.fleet.size() == 1) {
            in.open_pad(in.fleet.begin()->first);
        } else {
            in.open({Place::Kind::log, {}});
        }
    }

    void operator()(const intent::OpenPad& intent) const { in.open_pad(intent.aircraft); }

    void operator()(const intent::OpenAircraft& intent) const {
        in.open({Place::Kind::aircraft, intent.aircraft});
    }

    void operator()(const intent::OpenHistory& intent) const {
        in.open({Place::Kind::history, intent.aircraft});
    }

    void operator()(const intent::OpenStatus& intent) const {
        in.open({Place::Kind::status, intent.aircraft});
    }

    void operator()(const intent::OpenReturn& intent) const {
        const views::Assessed* aircraft = in.assessed(intent.aircraft);
        if (aircraft == nullptr) return;
        in.return_asked = make_return_day(*aircraft);
        in.open({Place::Kind::on_return, intent.aircraft});
    }

    /// What the page "How sure" asks for.
    template <class Trial>
    auto operator()(const Trial& trial) const -> decltype(try_out(std::declval<Inside&>(), trial)) {
        try_out(in, trial);
    }

    /// What the pages of the plan and of the money ask for.
    template <class Asked>
    auto operator()(const Asked& asked) const
        -> decltype(open_page(std::declval<Inside&>(), asked)) {
        open_page(in, asked);
    }

    void operator()(const intent::OpenChecks& intent) const {
        in.checks = make_checks_form();
        in.open({Place::Kind::checks, intent.aircraft});
    }

    void operator()(const intent::OpenParts& intent) const {
        const views::Assessed* aircraft = in.assessed(intent.aircraft);
        in.parts_asked =
            make_parts_form(aircraft == nullptr ? std::string{} : aircraft->state.registration);
        in.open({Place::Kind::parts, intent.aircraft});
    }

    void operator()(const intent::OpenPart& intent) const {
        in.open({Place::Kind::part, intent.part});
    }

    void operator()(const intent::OpenFiles&) const { in.open({Place::Kind::files, {}}); }

    void operator()(const intent::OpenForm& intent) const {
        // Work on what hangs on a part is work on the part.
        const FormContext context = in.context_of(intent.subject);
        const timeline::PartState* part = part_with_item(context, intent.subject);
        const bool is_part_work = part != nullptr && intent.kind == FormKind::work_done;
        const base::Id subject = is_part_work ? part->id : intent.subject;
        in.open({Place::Kind::form, subject});
        in.open_form(is_part_work ? FormKind::part_work : intent.kind, subject);
        if (!is_part_work) return;
        for (Form* const form : {&in.form, &in.entry.fresh})
            choose_part_work(*form, *part, intent.subject);
    }

    void operator()(const intent::Back&) const { in.host.go_back(); }

    void operator()(const intent::PadKey& intent) const { press(in.pad, intent.key); }

    void operator()(const intent::SaveReading&) const {
        const views::Assessed* aircraft = in.assessed(in.pad.aircraft);
        if (aircraft == nullptr || !in.pending.empty()) return;
        std::optional<facts::Body> body = pad_body(in.pad, *aircraft);
        if (!body) return;
        const auto& reading = std::get<facts::Reading>(body->fields);
        const base::Message done{
            Word::saved_reading,
            {base::hours_used_arg(reading.reads), base::text_arg(aircraft->state.registration)}};
        const facts::Fact fact =
            in.signer.sign(in.signer.new_id(), std::move(*body), in.ledger.visible());
        in.save_facts({fact}, {{}, Pending::After::aircraft, in.pad.aircraft, done});
    }

    void operator()(const intent::EditField&) const {}

    void operator()(const intent::ChooseOption& intent) const {
        in.choose(intent.field, intent.option);
    }

    void operator()(const intent::FillField& intent) const {
        in.type(intent.field, intent.text);
        in.end_field(intent.field);
    }

    void operator()(const intent::ToggleChoice& intent) const { in.toggle(intent.field); }

    void operator()(const intent::ToggleMore&) const {
        in.form.asks_more = !in.form.asks_more;
        put_apart(in.form);
    }

    void operator()(const intent::ChooseFieldFile& intent) const {
        in.entry.file_field = intent.field;
        in.host.choose_file();
    }

    void operator()(const intent::ClearEntry&) const { in.clear_entry(); }

    void operator()(const intent::UndoClear&) const { in.undo_clear(); }

    void operator()(const intent::SubmitForm&) const {
        if (!in.pending.empty()) return;
        if (act_on_form(in)) return;
        const std::vector<facts::Fact> facts =
            submit_form(in.form, in.context_of(in.form.aircraft), in.signer);
        if (facts.empty()) return;
        in.save_facts(
            facts,
            {{},
             after_form(in.form.kind),
             in.form.aircraft,
             {Word::saved_records, {base::whole_arg(static_cast<std::int64_t>(facts.size()))}},
             {},
             std::string{name_of(in.form.kind)},
             in.form.subject});
    }

    void operator()(const intent::OpenWhy& intent) const {
        if (in.dirty) in.make_screen();
        const auto place = static_cast<std::size_t>(intent.why);
        if (intent.why < 0 || place >= in.screen.whys.size()) return;
        open_sheet(in.screen.whys[place]);
    }

    void operator()(const intent::OpenRecord& intent) const {
        const auto same = in.ledger.visible().with_id(intent.fact);
        if (same.empty()) return;
        RecordSheet record;
        record.row = views::make_history_row(in.ledger.visible(), *same.front());
        record.lines = views::record_lines(*same.front());
        open_sheet(std::move(record));
    }

    void operator()(const intent::CloseSheet&) const { in.host.go_back(); }

    void operator()(const intent::AnswerQuestion& intent) const { answer_question(in, intent); }

    void operator()(const intent::ExportJournal&) const { export_journal(in); }

    void operator()(const intent::ChooseFile&) const {
        in.entry.file_field.clear();
        in.host.choose_file();
    }

    void operator()(const intent::WithdrawSaved& intent) const {
        if (!in.pending.empty()) return;
        const std::vector<facts::Fact> facts =
            take_back(intent.facts, in.ledger.visible(), in.today, in.signer);
        if (facts.empty()) return;
        Pending save;
        save.segment = Ledger::own_segment(facts);
        save.done = {Word::saved_withdrawn,
                     {base::whole_arg(static_cast<std::int64_t>(facts.size()))}};
        in.save_segment(std::move(save));
    }

    void operator()(const intent::LoadDemo&) const { in.host.fetch_demo(); }

    void operator()(const intent::AcceptImport&) const {
        if (!in.import || !in.import->preview.can_accept || !in.pending.empty()) return;
        Pending save;
        save.segment = in.ledger.import_segment(in.import->file_name, in.wall_ms, in.import->fresh);
        save.after = Pending::After::stay_on_files;
        save.done = {Word::saved_import,
                     {base::whole_arg(static_cast<std::int64_t>(in.import->fresh.size()))}};
        in.save_segment(std::move(save));
    }

    void operator()(const intent::DropImport&) const { in.import.reset(); }

    void operator()(const intent::SetAside& intent) const {
        turn(intent.batch, true, Word::saved_aside);
    }

    void operator()(const intent::TakeBack& intent) const {
        turn(intent.batch, false, Word::saved_taken_back);
    }

    void operator()(const intent::SetTheme& intent) const {
        in.theme = intent.theme;
        in.host.keep_setting("theme", theme_name(intent.theme));
    }

    void operator()(const intent::SetTextSize& intent) const {
        in.text_percent = text_size_near(intent.percent);
        in.host.keep_setting("text_size", std::to_string(in.text_percent));
    }

    void operator()(const intent::OpenKeys&) const { open_sheet(KeysSheet{in.single_keys}); }

    void operator()(const intent::SetSingleKeys& intent) const {
        in.single_keys = intent.on;
        in.host.keep_setting("keys", intent.on ? "on" : "off");
        open_sheet(KeysSheet{intent.on});
    }

    void operator()(const intent::AcceptCaution&) const {
        in.caution_accepted = true;
        in.host.keep_setting("caution", "accepted");
    }

    void operator()(const intent::StartNewVersion&) const { in.host.start_new_version(); }

    void operator()(const intent::DismissNotice&) const {
        in.notices.clear();
        in.alarms.clear();
    }

  private:
    [[nodiscard]] static Pending::After after_form(FormKind kind) {
        if (kind == FormKind::new_aircraft) return Pending::After::aircraft;
        if (kind == FormKind::from_template) return Pending::After::template_part;
        return Pending::After::leave_form;
    }

    template <class Sheet>
    void open_sheet(Sheet sheet) const {
        if (std::holds_alternative<std::monostate>(in.sheet)) in.host.push_page();
        in.sheet = std::move(sheet);
    }

    void turn(std::int32_t batch, bool aside, Word done) const {
        Pending save;
        save.segment = Ledger::aside_segment(batch, aside);
        save.after = Pending::After::stay;
        save.done = {done, {}};
        in.save_segment(std::move(save));
    }
};

}  // namespace

void AppState::Inside::apply(const Intent& intent) {
    std::visit(Apply{*this}, intent);
    dirty = true;
}

}  // namespace twoclocks::canvas

#include "wasm/app_state.hpp"

#include "wasm/app/inside.hpp"
#include "wasm/app/sharing.hpp"

#include <charconv>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

using base::Word;

namespace {

/// A moment that a setting holds; none when it holds something else.
std::optional<std::int64_t> milliseconds_in(std::string_view value) {
    std::int64_t out = 0;
    const char* end = value.data() + value.size();
    const auto read = std::from_chars(value.data(), end, out);
    const bool whole = read.ec == std::errc{} && read.ptr == end;
    return whole ? std::optional{out} : std::nullopt;
}

/// The whole number a setting holds, 0 when it holds something else.
double percent_in(std::string_view value) {
    double percent = 0;
    for (const char digit : value.substr(0, 4)) {
        if (digit < '0' || digit > '9') return 0;
        percent = percent * 10 + (digit - '0');
    }
    return percent;
}

}  // namespace

AppState::AppState(Host& host) : inside_(std::make_unique<Inside>(host)) {}

AppState::~AppState() = default;

void AppState::set_region(const base::Region& region) {
    inside_->region = region;
    inside_->dirty = true;
}

std::int32_t AppState::text_percent() const {
    return inside_->text_percent;
}

void AppState::set_two_panes(bool two_panes) {
    if (two_panes == inside_->two_panes) return;
    inside_->two_panes = two_panes;
    inside_->dirty = true;
}

void AppState::set_device(std::string_view device_id) {
    inside_->signer.set_device(device_id);
}

void AppState::set_setting(std::string_view name, std::string_view value) {
    Inside& in = *inside_;
    in.dirty = true;
    if (name == "caution") in.caution_accepted = value == "accepted";
    if (name == "author") in.signer.set_author(value);
    if (name == "last_export") in.kept.last_export = value;
    if (name == "exported_at") in.kept.exported_at_ms = milliseconds_in(value);
    if (name == "text_size") in.text_percent = text_size_near(percent_in(value));
    if (name == "page" && value == "specimen") in.places = {Place{Place::Kind::specimen, {}}};
    if (name == "keys") in.single_keys = value != "off";
    if (name != "theme") return;
    in.theme = value == "paper"   ? ThemeChoice::paper
               : value == "night" ? ThemeChoice::night
               : value == "sun"   ? ThemeChoice::sun
                                  : ThemeChoice::system;
}

void AppState::refresh(const Outside& outside) {
    Inside& in = *inside_;
    in.signer.refresh(outside);
    in.wall_ms = outside.wall_ms;
    const base::Date today{outside.today_day_number};
    if (today == in.today) return;
    in.today = today;
    if (in.is_loaded) in.reassess();
}

bool AppState::stored(StoredKind kind, std::string_view bytes) {
    Inside& in = *inside_;
    if (kind == StoredKind::snapshot) return in.ledger.take_snapshot(bytes);
    ++in.segments_since_snapshot;
    const base::Problems problems = in.ledger.take_in(bytes);
    in.has_unread = in.has_unread || !problems.empty();
    if (!problems.empty()) storage_note("gap", static_cast<std::int64_t>(problems.size()));
    return problems.empty();
}

void AppState::storage_note(std::string_view code, std::int64_t count) {
    Inside& in = *inside_;
    if (code == "cut") in.alarm(Word::storage_cut, count);
    if (code == "gap") in.alarm(Word::storage_gap, count);
    if (code == "refused") in.alarm(Word::storage_refused, count);
    if (code == "no_answer") in.alarm(Word::storage_no_answer, count);
    if (code == "persisted") in.kept.promised = count != 0;
    if (code == "used") in.kept.used_bytes = count;
    if (code == "room") in.kept.room_bytes = count;
    in.dirty = true;
}

void AppState::loaded() {
    inside_->is_loaded = true;
    inside_->reassess();
    inside_->maybe_snapshot();
    inside_->restore_draft(std::string{inside_->entry.kept});
}

void AppState::committed(std::uint32_t token, bool ok, std::string_view reason) {
    inside_->acknowledge(token, ok, reason);
    inside_->keep_drafts();
}

void AppState::stored_draft(std::string_view text) {
    inside_->entry.kept = text;
}

void AppState::field_text(std::string_view field_id, std::string_view text) {
    inside_->type(field_id, text);
    inside_->keep_drafts();
}

void AppState::field_closed(std::string_view field_id) {
    inside_->end_field(field_id);
}

void AppState::file_chosen(std::string_view name, std::string_view bytes) {
    Inside& in = *inside_;
    if (in.take_field_file(name, bytes) || take_locked(in, name, bytes)) return;
    in.import = read_import(name, bytes, in.ledger.visible(), in.today);
    show_import(in);
    in.dirty = true;
}

void AppState::lock_told(std::string_view code, std::string_view name) {
    tell_lock(*inside_, code, name);
}

void AppState::online(bool is_online) {
    inside_->is_online = is_online;
    inside_->dirty = true;
}

void AppState::new_version_ready() {
    inside_->has_new_version = true;
    inside_->dirty = true;
}

void AppState::other_tab_wrote(std::string_view segment) {
    (void)inside_->take_in(segment);
    inside_->dirty = true;
}

void AppState::read_only(bool is_read_only) {
    inside_->is_read_only = is_read_only;
    inside_->dirty = true;
}

void AppState::back() {
    inside_->close();
    inside_->keep_drafts();
}

void AppState::apply(const Intent& intent) {
    inside_->apply(intent);
    inside_->keep_drafts();
}

void AppState::work_in_slices() {
    inside_->in_slices = true;
}

bool AppState::work_on() {
    constexpr std::int32_t slice = 1'000;  // ways
    Inside& in = *inside_;
    const std::vector<LifeAsked> asked = in.lives_asked();
    if (in.lives.are_over(asked)) return false;
    (void)in.lives.go_on(asked, in.fleet, slice);
    in.dirty = true;
    return true;
}

void AppState::export_now() {
    export_journal(*inside_);
}

const Screen& AppState::screen() {
    if (inside_->dirty) inside_->make_screen();
    return inside_->screen;
}

const base::Region& AppState::region() const {
    return inside_->region;
}

}  // namespace twoclocks::canvas

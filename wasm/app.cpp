#include "wasm/app.hpp"

#include "wasm/app_inside.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {

App::App(Host& host) : inside_(std::make_unique<Inside>(host)) {}

App::~App() = default;

bool App::set_font(int weight, std::string_view bytes) {
    return inside_->set_font(weight, bytes);
}

void App::set_region(std::string_view decimal_sign, std::string_view group_sign, int date_order) {
    base::Region region;
    region.decimal_sign = std::string{decimal_sign};
    region.group_sign = std::string{group_sign};
    if (date_order == 1) region.date_order = base::DateOrder::month_first;
    if (date_order == 2) region.date_order = base::DateOrder::year_first;
    inside_->state().set_region(region);
    inside_->changed();
}

void App::set_device(std::string_view device_id) {
    inside_->state().set_device(device_id);
}

void App::set_setting(std::string_view name, std::string_view value) {
    inside_->state().set_setting(name, value);
    inside_->changed();
}

void App::stored_draft(std::string_view text) {
    inside_->state().stored_draft(text);
}

void App::refresh(const Outside& outside) {
    inside_->state().refresh(outside);
    inside_->changed();
}

bool App::stored(StoredKind kind, std::string_view bytes) {
    return inside_->state().stored(kind, bytes);
}

void App::export_now() {
    inside_->state().export_now();
}

void App::storage_note(std::string_view code, std::int64_t count) {
    inside_->state().storage_note(code, count);
    inside_->changed();
}

void App::loaded() {
    inside_->state().loaded();
    inside_->start();
}

void App::resize(const Viewport& viewport) {
    inside_->resize(viewport);
}

void App::appearance(const Appearance& appearance) {
    inside_->set_appearance(appearance);
}

// NOLINTNEXTLINE(readability-function-size): six plain values, as the bridge has them
void App::pointer(
    PointerPhase phase, int pointer_id, float x, float y, double time_ms, PointerKind kind) {
    inside_->pointer({phase, pointer_id, x, y, time_ms, kind});
}

void App::wheel(float x, float y, float delta_x, float delta_y) {
    inside_->wheel(x, y, delta_x, delta_y);
}

void App::key(Key key) {
    inside_->key(key);
}

void App::typed(char sign) {
    inside_->typed(sign);
}

void App::key_or_sign(int key) {
    constexpr int first_sign = 32;
    constexpr int last_sign = 126;
    if (key < first_sign) inside_->key(static_cast<Key>(key));
    if (key >= first_sign && key <= last_sign) inside_->typed(static_cast<char>(key));
}

void App::activate(std::string_view node_id) {
    inside_->activate(node_id);
}

void App::focus(std::string_view node_id) {
    inside_->focus(node_id);
}

void App::field_text(std::string_view field_id, std::string_view text) {
    inside_->state().field_text(field_id, text);
    inside_->changed();
}

void App::field_closed(std::string_view field_id, bool next) {
    inside_->state().field_closed(field_id);
    inside_->field_closed(field_id, next);
}

void App::file_chosen(std::string_view name, std::string_view bytes) {
    inside_->state().file_chosen(name, bytes);
    inside_->changed();
}

void App::lock_told(std::string_view code, std::string_view name) {
    inside_->state().lock_told(code, name);
    inside_->changed();
}

void App::committed(std::uint32_t token, bool ok, std::string_view reason) {
    inside_->state().committed(token, ok, reason);
    inside_->changed();
}

void App::online(bool is_online) {
    inside_->state().online(is_online);
    inside_->changed();
}

void App::new_version_ready() {
    inside_->state().new_version_ready();
    inside_->changed();
}

void App::other_tab_wrote(std::string_view segment) {
    inside_->state().other_tab_wrote(segment);
    inside_->changed();
}

void App::read_only(bool is_read_only) {
    inside_->state().read_only(is_read_only);
    inside_->changed();
}

void App::back() {
    inside_->state().back();
    inside_->changed();
}

bool App::frame(double time_ms) {
    return inside_->frame(time_ms);
}

bool App::take_font_change() {
    return inside_->take_font_change();
}

const Scene& App::scene() const {
    return inside_->scene();
}

}  // namespace twoclocks::canvas

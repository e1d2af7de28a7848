// How the App lays a frame out and tells the host what changed.
#include "imgui.h"
#include "wasm/app_inside.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

constexpr double frame_most_ms = 1000;  // a page that slept does not leap
constexpr float frame_least_s = 0.001F;
constexpr std::int32_t settle_most =
    6;  // tap -> intent -> page -> scroll position, with room to spare

}  // namespace

App::Inside::Inside(Host& host) : host_(host), state_(host), context_(ImGui::CreateContext()) {
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    io.ConfigInputTextCursorBlink = false;
    io.DisplaySize = {viewport_.width_px, viewport_.height_px};
    state_.work_in_slices();
}

App::Inside::~Inside() {
    ImGui::DestroyContext(context_);
}

bool App::Inside::set_font(int weight, std::string_view bytes) {
    const bool taken = fonts_.set(weight, bytes);
    changed();
    return taken;
}

void App::Inside::set_appearance(const Appearance& appearance) {
    appearance_ = appearance;
    gestures_.set_less_motion(appearance.less_motion);
    changed();
}

void App::Inside::resize(const Viewport& viewport) {
    viewport_ = viewport;
    viewport_.width_px = std::max(1.0F, viewport.width_px);
    viewport_.height_px = std::max(1.0F, viewport.height_px);
    changed();
}

float App::Inside::text_scale() const {
    // Larger text makes the page smaller in the pixels of its layout, down to what still works.
    const float most = std::max(1.0F, viewport_.width_px / page::layout_least);
    return std::min(static_cast<float>(state_.text_percent()) / 100.0F, most);
}

Viewport App::Inside::laid_out() const {
    const float scale = text_scale();
    return {viewport_.width_px / scale,
            viewport_.height_px / scale,
            viewport_.device_pixel_ratio * scale,
            viewport_.safe_top_px / scale,
            viewport_.safe_bottom_px / scale};
}

FieldRequest App::Inside::on_page(FieldRequest field) const {
    const float scale = text_scale();
    for (float* const length : {&field.left_px, &field.top_px, &field.width_px, &field.height_px})
        *length *= scale;
    return field;
}

void App::Inside::start() {
    started_ = true;
    changed();
}

void App::Inside::changed() {
    if (started_) host_.wake(1);
}

void App::Inside::bake_fonts() {
    const float ratio = laid_out().device_pixel_ratio;
    if (!fonts_.stale(ratio)) return;
    fonts_.build(ratio);
    font_change_ = true;
    memory_.lists.clear();
}

bool App::Inside::take_font_change() {
    return std::exchange(font_change_, false);
}

Answer App::Inside::lay_out_once() {
    const Viewport view = laid_out();
    state_.set_two_panes(view.width_px >= page::wide_from);
    const Screen& screen = state_.screen();
    keep_scroll_of(screen);
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {view.width_px, view.height_px};
    const float ratio = std::max(0.5F, view.device_pixel_ratio);
    io.DisplayFramebufferScale = {ratio, ratio};
    ImGui::NewFrame();
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(io.DisplaySize);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, 0);
    ImGui::Begin("page",
                 nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoInputs |
                     ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                     ImGuiWindowFlags_NoMove);
    ImGui::GetStyle().CircleTessellationMaxError = 0.25F / ratio;
    scene_.begin();
    memory_.regions.clear();
    memory_.drag_areas.clear();
    memory_.boxes.clear();
    memory_.unsettled = false;
    Pen pen{*ImGui::GetWindowDrawList(), fonts_, look_for(screen.theme, appearance_), ratio};
    Ui ui{pen,
          scene_,
          state_.region(),
          memory_,
          {{0, 0, view.width_px, view.height_px}, view.safe_top_px, view.safe_bottom_px}};
    Answer answer = draw_screen(ui, screen);
    ImGui::End();
    ImGui::PopStyleVar(3);
    ImGui::Render();
    scene_.activate({});
    return answer;
}

void App::Inside::keep_scroll_of(const Screen& screen) {
    std::string key = page_key(screen, state_.region());
    const bool sheet = !std::holds_alternative<std::monostate>(screen.sheet);
    if (!sheet) memory_.offsets["sheet"] = 0;
    if (key == page_) return;
    page_ = std::move(key);
    scene_.set_focus({});
    memory_.pressed.clear();
    gestures_.stop();
    for (const char* fresh : {"form", "pad", "log", "files", "sheet"})
        memory_.offsets[fresh] = 0;
}

void App::Inside::lay_out() {
    if (!started_) return;
    for (std::int32_t round = 0; round < settle_most; ++round) {
        bake_fonts();
        const Answer answer = lay_out_once();
        if (answer) apply(*answer);
        const bool seeks = seek_problem();
        for (const Node& node : scene_.nodes()) {
            fonts_.read(node.name);
            fonts_.read(node.value);
        }
        const bool settled = !answer && !seeks && !memory_.unsettled;
        if (settled && !fonts_.stale(laid_out().device_pixel_ratio)) break;
    }
    follow_field();
    tell_host();
}

void App::Inside::apply(const Intent& intent) {
    if (const auto* edit = std::get_if<intent::EditField>(&intent)) {
        state_.apply(intent);
        open_field(edit->field);
        return;
    }
    drop_field();
    state_.apply(intent);
    if (std::holds_alternative<intent::SubmitForm>(intent)) seek_rounds_ = 2;
}

/// After a form was sent, what is wrong with it is scrolled into sight. True when the page moved.
bool App::Inside::seek_problem() {
    if (seek_rounds_ <= 0) return false;
    --seek_rounds_;
    const auto& nodes = scene_.nodes();
    const auto problem = std::find_if(nodes.begin(), nodes.end(), [](const Node& node) {
        return node.role == Role::alert && node.layer == 0;
    });
    if (problem == nodes.end()) return false;
    seek_rounds_ = 0;
    return show_box(problem->box);
}

void App::Inside::drop_field() {
    if (shown_field_.id.empty()) return;
    state_.field_closed(shown_field_.id);
    shown_field_ = {};
    memory_.editing.clear();
    host_.close_field();
}

void App::Inside::open_field(const std::string& id) {
    const auto box = memory_.boxes.find(id);
    if (box == memory_.boxes.end()) return;
    memory_.editing = id;
    shown_field_ = box->second;
    host_.edit_field(on_page(shown_field_));
}

void App::Inside::follow_field() {
    if (shown_field_.id.empty()) return;
    const auto box = memory_.boxes.find(shown_field_.id);
    const auto& nodes = scene_.nodes();
    const bool seen = std::any_of(nodes.begin(), nodes.end(), [&](const Node& node) {
        return node.role == Role::field && node.id == shown_field_.id && node.visible.height() > 0;
    });
    if (box == memory_.boxes.end() || !seen) {
        drop_field();
        return;
    }
    const FieldRequest& now = box->second;
    const bool moved = now.left_px != shown_field_.left_px || now.top_px != shown_field_.top_px ||
                       now.width_px != shown_field_.width_px ||
                       now.height_px != shown_field_.height_px;
    if (!moved) return;
    shown_field_ = now;
    host_.edit_field(on_page(shown_field_));
}

void App::Inside::tell_host() {
    std::string json = scene_.json(text_scale());
    if (json == mirrored_) return;
    mirrored_ = std::move(json);
    host_.mirror(mirrored_);
}

bool App::Inside::frame(double time_ms) {
    if (!started_) return false;
    const double since_ms = std::clamp(time_ms - last_frame_ms_, 0.0, frame_most_ms);
    last_frame_ms_ = time_ms;
    ImGui::GetIO().DeltaTime = std::max(frame_least_s, static_cast<float>(since_ms / 1000));
    const Gesture glide = gestures_.step(time_ms);
    if (glide.kind == Gesture::Kind::scroll)
        scroll_at(glide.first_x / text_scale(),
                  glide.first_y / text_scale(),
                  -glide.scroll_y / text_scale());
    lay_out();
    const bool works = state_.work_on();
    return gestures_.gliding() || works;
}

}  // namespace twoclocks::canvas

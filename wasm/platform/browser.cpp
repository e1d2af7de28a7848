// The only file that talks to JavaScript: host calls go out, events and frames come in.
//
// Text crosses as an address and a length in UTF-8; nobody keeps an address after the call. What is
// called here is written in web/bridge.js, and nothing here decides anything.
#include "imgui.h"
#include "imgui_impl_opengl3.h"
#include "wasm/app.hpp"
#include "wasm/platform/given.hpp"
#include "wasm/platform/host.hpp"

#include <GLES3/gl3.h>
#include <array>
#include <cstdint>
#include <emscripten.h>
#include <emscripten/html5.h>
#include <optional>
#include <string_view>

using Length = std::uint32_t;

// clang-format off
EM_JS(void, host_commit, (Length token, const char* bytes, Length length),
  { Module["host"]["commit"](token, bytes, length); });
EM_JS(void, host_keep_snapshot, (const char* bytes, Length length),
  { Module["host"]["keepSnapshot"](bytes, length); });
EM_JS(void, host_hand_over_file, (const char* name, Length name_length, const char* bytes,
                                  Length length),
  { Module["host"]["handOverFile"](name, name_length, bytes, length); });
EM_JS(void, host_print_paper, (const char* name, Length name_length, const char* html,
                               Length length),
  { Module["host"]["printPaper"](name, name_length, html, length); });
EM_JS(void, host_lock, (bool locks, const char* name, Length name_length, const char* bytes,
                        Length length, const char* password, Length password_length),
  { Module["host"]["lock"](locks, name, name_length, bytes, length, password, password_length); });
EM_JS(void, host_choose_file, (), { Module["host"]["chooseFile"](); });
EM_JS(void, host_fetch_demo, (), { Module["host"]["fetchDemo"](); });
EM_JS(void, host_name_field, (const char* id, Length id_length, const char* label,
                              Length label_length, const char* text, Length text_length),
  { Module["host"]["nameField"](id, id_length, label, label_length, text, text_length); });
EM_JS(void, host_edit_field, (int kind, float left, float top, float width, float height),
  { Module["host"]["editField"](kind, left, top, width, height); });
EM_JS(void, host_close_field, (), { Module["host"]["closeField"](); });
EM_JS(void, host_mirror, (const char* json, Length length),
  { Module["host"]["mirror"](json, length); });
EM_JS(void, host_announce, (const char* text, Length length),
  { Module["host"]["announce"](text, length); });
EM_JS(void, host_push_page, (), { Module["host"]["pushPage"](); });
EM_JS(void, host_go_back, (), { Module["host"]["goBack"](); });
EM_JS(void, host_keep_setting, (const char* name, Length name_length, const char* value,
                                Length value_length),
  { Module["host"]["keepSetting"](name, name_length, value, value_length); });
EM_JS(void, host_keep_draft, (const char* text, Length length),
  { Module["host"]["keepDraft"](text, length); });
EM_JS(void, host_start_new_version, (), { Module["host"]["startNewVersion"](); });
EM_JS(void, host_wake, (int frames), { Module["host"]["wake"](frames); });

// clang-format on

namespace twoclocks::canvas {
namespace {

std::uint32_t length_of(std::string_view text) {
    return static_cast<std::uint32_t>(text.size());
}

class BrowserHost final : public Host {
  public:
    void commit(std::uint32_t token, std::string_view bytes) override {
        host_commit(token, bytes.data(), length_of(bytes));
    }

    void keep_snapshot(std::string_view bytes) override {
        host_keep_snapshot(bytes.data(), length_of(bytes));
    }

    void hand_over_file(std::string_view name, std::string_view bytes) override {
        host_hand_over_file(name.data(), length_of(name), bytes.data(), length_of(bytes));
    }

    void print_paper(std::string_view name, std::string_view html) override {
        host_print_paper(name.data(), length_of(name), html.data(), length_of(html));
    }

    void hand_over_locked(const LockRequest& request) override { lock(request, true); }

    void unlock(const LockRequest& request) override { lock(request, false); }

    void choose_file() override { host_choose_file(); }

    void fetch_demo() override { host_fetch_demo(); }

    void edit_field(const FieldRequest& request) override {
        host_name_field(request.id.data(),
                        length_of(request.id),
                        request.label.data(),
                        length_of(request.label),
                        request.text.data(),
                        length_of(request.text));
        host_edit_field(static_cast<int>(request.kind),
                        request.left_px,
                        request.top_px,
                        request.width_px,
                        request.height_px);
    }

    void close_field() override { host_close_field(); }

    void mirror(std::string_view json) override { host_mirror(json.data(), length_of(json)); }

    void announce(std::string_view text) override { host_announce(text.data(), length_of(text)); }

    void push_page() override { host_push_page(); }

    void go_back() override { host_go_back(); }

    void keep_setting(std::string_view name, std::string_view value) override {
        host_keep_setting(name.data(), length_of(name), value.data(), length_of(value));
    }

    void keep_draft(std::string_view text) override {
        host_keep_draft(text.data(), length_of(text));
    }

    void start_new_version() override { host_start_new_version(); }

    void wake(int frames) override { host_wake(frames); }

  private:
    static void lock(const LockRequest& request, bool locks) {
        const auto& [name, bytes, word] = request;
        const auto [n, b, w] = std::array{length_of(name), length_of(bytes), length_of(word)};
        host_lock(locks, name.data(), n, bytes.data(), b, word.data(), w);
    }
};

/// The one page this program serves, made by tc_start.
struct Page {
    BrowserHost host;
    App app{host};
    EMSCRIPTEN_WEBGL_CONTEXT_HANDLE context{0};
};

std::optional<Page>& page() {
    static std::optional<Page> only;
    return only;
}

App& app() {
    return page()->app;
}

bool make_context(Page& made) {
    EmscriptenWebGLContextAttributes wanted;
    emscripten_webgl_init_context_attributes(&wanted);
    wanted.majorVersion = 2;
    wanted.alpha = false;
    wanted.depth = false;
    wanted.stencil = false;
    wanted.antialias = false;  // lines and text bring their own smooth edges
    wanted.powerPreference = EM_WEBGL_POWER_PREFERENCE_LOW_POWER;
    wanted.enableExtensionsByDefault = false;
    made.context = emscripten_webgl_create_context("#canvas", &wanted);
    if (made.context <= 0) return false;
    emscripten_webgl_make_context_current(made.context);
    return ImGui_ImplOpenGL3_Init("#version 300 es");
}

/// Puts the atlas on the GPU, once the typeface is baked; what is laid out is pointed at it.
void prepare(const ImDrawData& drawn, bool font_changed) {
    ImGui_ImplOpenGL3_NewFrame();
    if (font_changed) {
        ImGui_ImplOpenGL3_DestroyFontsTexture();
        ImGui_ImplOpenGL3_CreateFontsTexture();
    }
    const ImTextureID texture = ImGui::GetIO().Fonts->TexID;
    for (ImDrawList* const list : drawn.CmdLists) {
        for (ImDrawCmd& command : list->CmdBuffer)
            command.TextureId = texture;
    }
}

void paint(ImDrawData& drawn) {
    glViewport(0,
               0,
               static_cast<int>(drawn.DisplaySize.x * drawn.FramebufferScale.x),
               static_cast<int>(drawn.DisplaySize.y * drawn.FramebufferScale.y));
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(&drawn);
}

std::uint64_t join(std::uint32_t high, std::uint32_t low) {
    return (static_cast<std::uint64_t>(high) << 32U) | low;
}

}  // namespace
}  // namespace twoclocks::canvas

using namespace twoclocks::canvas;  // what follows are the calls of web/bridge.js, one line each

extern "C" {

/// Makes the app and its WebGL 2 context; false when the browser has none.
EMSCRIPTEN_KEEPALIVE bool tc_start() {
    page().emplace();
    return make_context(*page());
}

EMSCRIPTEN_KEEPALIVE void tc_context_restored() {
    emscripten_webgl_make_context_current(page()->context);
    ImGui_ImplOpenGL3_Shutdown();
    ImGui_ImplOpenGL3_Init("#version 300 es");
}

/// One frame; true when another is wanted.
EMSCRIPTEN_KEEPALIVE bool tc_frame(double time_ms) {
    const bool more = app().frame(time_ms);
    ImDrawData* const drawn = ImGui::GetDrawData();
    if (drawn == nullptr) return more;
    prepare(*drawn, app().take_font_change());
    paint(*drawn);
    return more;
}

// clang-format off
EMSCRIPTEN_KEEPALIVE int tc_font(int weight, char* bytes, Length length) {
    return app().set_font(weight, Given{bytes, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_region(
    char* decimal, Length decimal_length, char* group, Length group_length, int date_order) {
    const Given decimal_sign{decimal, decimal_length};
    const Given group_sign{group, group_length};
    app().set_region(decimal_sign.text(), group_sign.text(), date_order);
}
EMSCRIPTEN_KEEPALIVE void tc_device(char* id, Length l) { app().set_device(Given{id, l}.text()); }
EMSCRIPTEN_KEEPALIVE void tc_setting(char* name, Length name_length, char* value, Length length) {
    app().set_setting(Given{name, name_length}.text(), Given{value, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_draft(char* at, Length l) { app().stored_draft(Given{at, l}.text()); }
EMSCRIPTEN_KEEPALIVE void tc_refresh(std::int32_t today_day_number,
                                     double wall_ms,
                                     std::uint32_t random_1,
                                     std::uint32_t random_2,
                                     std::uint32_t random_3,
                                     std::uint32_t random_4) {
    app().refresh({.today_day_number = today_day_number,
                   .wall_ms = static_cast<std::int64_t>(wall_ms),
                   .random_a = join(random_1, random_2),
                   .random_b = join(random_3, random_4)});
}
EMSCRIPTEN_KEEPALIVE bool tc_stored(int kind, char* bytes, Length length) {
    return app().stored(static_cast<StoredKind>(kind), Given{bytes, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_storage_note(char* code, Length length, double count) {
    app().storage_note(Given{code, length}.text(), static_cast<std::int64_t>(count));
}
EMSCRIPTEN_KEEPALIVE void tc_loaded() { app().loaded(); }
EMSCRIPTEN_KEEPALIVE void tc_resize(float width_px,
                                    float height_px,
                                    float device_pixel_ratio,
                                    float safe_top_px,
                                    float safe_bottom_px) {
    app().resize({width_px, height_px, device_pixel_ratio, safe_top_px, safe_bottom_px});
}
EMSCRIPTEN_KEEPALIVE void tc_appearance(bool dark, bool more_contrast, bool less_motion) {
    app().appearance({dark, more_contrast, less_motion});
}
EMSCRIPTEN_KEEPALIVE void tc_pointer(int phase, int id, float x, float y, double ms, int kind) {
    app().pointer(static_cast<PointerPhase>(phase), id, x, y, ms, static_cast<PointerKind>(kind));
}
EMSCRIPTEN_KEEPALIVE void tc_wheel(float x, float y, float w, float h) { app().wheel(x, y, w, h); }
EMSCRIPTEN_KEEPALIVE void tc_key(int key) { app().key_or_sign(key); }
EMSCRIPTEN_KEEPALIVE void tc_activate(char* id, Length l) { app().activate(Given{id, l}.text()); }
EMSCRIPTEN_KEEPALIVE void tc_focus(char* id, Length l) { app().focus(Given{id, l}.text()); }
EMSCRIPTEN_KEEPALIVE void tc_field_text(char* id, Length id_length, char* text, Length length) {
    app().field_text(Given{id, id_length}.text(), Given{text, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_field_closed(char* id, Length length, bool next) {
    app().field_closed(Given{id, length}.text(), next);
}
EMSCRIPTEN_KEEPALIVE void tc_file_chosen(char* name, Length name_length, char* at, Length length) {
    app().file_chosen(Given{name, name_length}.text(), Given{at, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_lock_told(char* code, Length l, char* name, Length name_length) {
    app().lock_told(Given{code, l}.text(), Given{name, name_length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_committed(Length token, bool ok, char* reason, Length length) {
    app().committed(token, ok, Given{reason, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_online(bool is_online) { app().online(is_online); }
EMSCRIPTEN_KEEPALIVE void tc_new_version_ready() { app().new_version_ready(); }
EMSCRIPTEN_KEEPALIVE void tc_other_tab_wrote(char* segment, Length length) {
    app().other_tab_wrote(Given{segment, length}.text());
}
EMSCRIPTEN_KEEPALIVE void tc_read_only(bool is_so) { app().read_only(is_so); }
EMSCRIPTEN_KEEPALIVE void tc_back() { app().back(); }
EMSCRIPTEN_KEEPALIVE void tc_export_now() { app().export_now(); }

// clang-format on

}  // extern "C"

// The inside of App: state, gestures, scene and frame put together. Only app*.cpp include this.
#pragma once

#include "wasm/app.hpp"
#include "wasm/app_state.hpp"
#include "wasm/fonts.hpp"
#include "wasm/frame.hpp"
#include "wasm/platform/gestures.hpp"
#include "wasm/widgets/ui.hpp"

#include <string>
#include <string_view>

struct ImGuiContext;

namespace twoclocks::canvas {

struct App::Inside {
  public:
    explicit Inside(Host& host);
    ~Inside();
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;

    [[nodiscard]] AppState& state() { return state_; }

    [[nodiscard]] const Scene& scene() const { return scene_; }

    bool set_font(int weight, std::string_view bytes);
    void set_appearance(const Appearance& appearance);
    void resize(const Viewport& viewport);
    void start();
    /// Something outside the picture changed: a frame is wanted.
    void changed();

    void pointer(const PointerEvent& event);
    void wheel(float x, float y, float delta_x, float delta_y);
    void key(Key key);
    void typed(char sign);
    void activate(std::string_view id);
    void focus(std::string_view id);
    void field_closed(std::string_view id, bool next);

    [[nodiscard]] bool frame(double time_ms);
    [[nodiscard]] bool take_font_change();

  private:
    // app_frame.cpp
    void lay_out();
    [[nodiscard]] Answer lay_out_once();
    void keep_scroll_of(const Screen& screen);
    void tell_host();
    void follow_field();
    void open_field(const std::string& id);
    void drop_field();
    [[nodiscard]] float text_scale() const;
    [[nodiscard]] Viewport laid_out() const;  // the page in the pixels of its layout
    [[nodiscard]] FieldRequest on_page(FieldRequest field) const;
    [[nodiscard]] bool seek_problem();
    void bake_fonts();

    // app_input.cpp
    void tap(const Gesture& gesture, bool is_mouse);
    void pinch(float spread);
    [[nodiscard]] bool drag(const PointerEvent& event);
    void scroll_main(float by);
    [[nodiscard]] const ScrollRegion* region_of(const Rect& box) const;
    void scroll_at(float x, float y, float by);
    [[nodiscard]] std::string node_at(float x, float y) const;
    [[nodiscard]] bool sheet_open() const;
    void apply(const Intent& intent);
    void activate_and_lay_out(const std::string& id);
    [[nodiscard]] std::string field_after(const std::string& id) const;
    void move_focus(int step);
    void show_node(const std::string& id);
    [[nodiscard]] bool show_box(const Rect& box);
    [[nodiscard]] const ScrollRegion* main_region() const;
    void escape();

    Host& host_;
    AppState state_;
    ImGuiContext* context_;
    Fonts fonts_;
    Scene scene_;
    Memory memory_;
    Gestures gestures_;
    Viewport viewport_;
    Appearance appearance_;
    std::string mirrored_;
    std::string page_;
    FieldRequest shown_field_;
    double last_frame_ms_{0};
    std::int32_t seek_rounds_{0};
    std::int32_t pinched_from_percent_{0};  // the text size when the pinch began
    bool started_{false};
    bool font_change_{false};
};

}  // namespace twoclocks::canvas

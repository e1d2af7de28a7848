// The whole program behind the page: events in, frames and host calls out. No JavaScript, no GL
// here, so
// the same App runs natively in tests with a host of their own.
#pragma once

#include "wasm/platform/host.hpp"
#include "wasm/platform/scene.hpp"

#include <cstdint>
#include <memory>
#include <string_view>

namespace twoclocks::canvas {

enum class PointerPhase : std::uint8_t { down, move, up, cancel };
enum class PointerKind : std::uint8_t { mouse, touch };
enum class Key : std::uint8_t {
    enter,
    space,
    escape,
    tab,
    back_tab,
    up,
    down,
    page_up,
    page_down,
    home,
    end,
    erase
};
enum class StoredKind : std::uint8_t { snapshot, segment };

/// Size of the page and of its text.
struct Viewport {
    float width_px{390};
    float height_px{844};
    float device_pixel_ratio{1};
    float safe_top_px{0};
    float safe_bottom_px{0};
};

/// What the system asks for; live.
struct Appearance {
    bool dark{false};
    bool more_contrast{false};
    bool less_motion{false};
};

/// What only the shell can know. Refreshed on start, on input and when the page becomes visible.
struct Outside {
    std::int32_t today_day_number{0};
    std::int64_t wall_ms{0};
    std::uint64_t random_a{0};  // fresh every time
    std::uint64_t random_b{0};
};

class App {
  public:
    explicit App(Host& host);
    ~App();
    App(const App&) = delete;
    App& operator=(const App&) = delete;

    // Start: fonts and settings in any order, then stored bytes oldest first, then loaded().
    /// Weight 400 or 600; a copy is taken. False: no font.
    bool set_font(int weight, std::string_view bytes);
    void set_region(std::string_view decimal_sign, std::string_view group_sign, int date_order);
    void set_device(std::string_view device_id);  // random, made once by the shell
    void set_setting(std::string_view name, std::string_view value);
    void stored_draft(std::string_view text);  // what Host::keep_draft was given last
    void refresh(const Outside& outside);
    [[nodiscard]] bool stored(StoredKind kind,
                              std::string_view bytes);  // false: a snapshot of no use
    void storage_note(std::string_view code,
                      std::int64_t count);  // e.g. "cut" 1: torn tail was cut
    void loaded();

    void resize(const Viewport& viewport);
    void appearance(const Appearance& appearance);
    void pointer(
        PointerPhase phase, int pointer_id, float x, float y, double time_ms, PointerKind kind);
    void wheel(float x, float y, float delta_x, float delta_y);
    void key(Key key);
    void typed(char sign);                    // a character typed outside any field, ASCII
    void key_or_sign(int key);                // from 32 on an ASCII character, below it a Key
    void activate(std::string_view node_id);  // from the mirror
    void focus(std::string_view node_id);     // the mirror's focus; empty is none
    void field_text(std::string_view field_id, std::string_view text);
    void field_closed(std::string_view field_id, bool next);
    void file_chosen(std::string_view name, std::string_view bytes);
    void lock_told(std::string_view code, std::string_view name);  // as sharing.hpp says
    void committed(std::uint32_t token, bool ok, std::string_view reason);
    void online(bool is_online);
    void new_version_ready();
    void other_tab_wrote(std::string_view segment);  // a segment another tab committed
    void read_only(bool is_read_only);               // another tab holds the pen
    void back();
    void export_now();  // hands the journal over, from memory

    /// Lays one frame out; the caller paints ImGui::GetDrawData(). True when another frame is
    /// wanted.
    [[nodiscard]] bool frame(double time_ms);
    /// Font atlas must be rebuilt on the GPU (after a frame that returns true here once).
    [[nodiscard]] bool take_font_change();
    [[nodiscard]] const Scene& scene() const;

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

}  // namespace twoclocks::canvas

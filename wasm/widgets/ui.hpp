// What every widget needs while one frame is laid out: pen, scene, words, a column to fill
// downwards, and what is kept from frame to frame (scroll positions, measured lists).
#pragma once

#include "wasm/platform/host.hpp"
#include "wasm/platform/scene.hpp"
#include "wasm/widgets/pen.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/function_ref.hpp"
#include "engine/base/region.hpp"

namespace twoclocks::canvas {

/// A column that widgets fill from the top.
struct Column {
    float left{0};
    float width{0};
    float y{0};

    [[nodiscard]] float right() const { return left + width; }
};

/// A part of the page that scrolls.
struct ScrollRegion {
    std::string key;
    Rect box;
    float offset{0};
    float most{0};
    std::int32_t layer{0};
};

/// Where the rows of a long list begin, kept while nothing changes.
struct ListMeasure {
    std::uint64_t revision{0};
    Look look{};
    float width{0};
    std::vector<float> tops;  // one more than rows: the last is the height of all
};

/// What a finger can take hold of and move about, instead of scrolling.
struct DragArea {
    std::string key;
    Rect box;
};

/// What is held, and where it was moved to.
struct Drag {
    std::string key;  // empty: nothing is held
    int pointer{0};
    Point at;
    bool moved{false};  // since the page last looked
};

/// What stays from frame to frame.
struct Memory {
    std::map<std::string, float> offsets;
    std::map<std::string, ListMeasure> lists;
    std::vector<ScrollRegion> regions;
    std::vector<DragArea> drag_areas;
    Drag drag;
    std::map<std::string, FieldRequest> boxes;  // the fields of this frame
    std::string pressed;                        // node under a finger
    std::string editing;                        // field with a real input over it
    bool show_focus{false};
    bool unsettled{false};  // a scroll position had to give way: lay out once more
};

/// Size of the page and what of it is safe to draw on.
struct PageFrame {
    Rect whole;
    float safe_top{0};
    float safe_bottom{0};

    [[nodiscard]] bool wide() const { return whole.width() >= page::wide_from; }

    [[nodiscard]] bool low() const { return whole.height() < page::low_below; }
};

class Ui {
  public:
    Ui(Pen& pen, Scene& scene, const base::Region& region, Memory& memory, PageFrame frame);

    [[nodiscard]] Pen& pen() { return *pen_; }

    [[nodiscard]] Scene& scene() { return *scene_; }

    [[nodiscard]] Memory& memory() { return *memory_; }

    [[nodiscard]] const PageFrame& frame() const { return frame_; }

    [[nodiscard]] const base::Region& region() const { return *region_; }

    [[nodiscard]] std::uint64_t revision() const { return revision_; }

    void set_revision(std::uint64_t revision) { revision_ = revision; }

    /// How wide the words of this page may run.
    [[nodiscard]] float page_width() const { return page_width_; }

    void set_page_width(float width) { page_width_ = width; }

    /// Where a column narrower than its pane stands: in the middle, or beside a list at its left.
    [[nodiscard]] float page_lean() const { return page_lean_; }

    void set_page_lean(float lean) { page_lean_ = lean; }

    /// Two columns stand side by side here.
    [[nodiscard]] bool roomy() const { return column_.width >= page::two_columns_from; }

    [[nodiscard]] std::string say(const base::Message& message) const;
    [[nodiscard]] std::string say(base::Word word) const;

    // The column that is being filled.
    [[nodiscard]] Column column() const { return column_; }

    void use(const Column& column) { column_ = column; }

    [[nodiscard]] float left() const { return column_.left; }

    [[nodiscard]] float width() const { return column_.width; }

    [[nodiscard]] float y() const { return column_.y; }

    void advance(float height) { column_.y += height; }

    void gap(float height) { column_.y += height; }

    /// The next `height` of the column, which is taken.
    Rect take(float height);
    /// Draws in a column of its own inside `box`, then restores; returns the bottom reached.
    float inside(const Rect& box, base::FunctionRef<void()> draw);
    /// Two columns side by side; goes on below the longer.
    void side_by_side(float share,
                      float between,
                      base::FunctionRef<void()> left,
                      base::FunctionRef<void()> right);

    // Nodes.
    std::int32_t node(Node node);
    /// Adds a node that can be activated; true when it was.
    [[nodiscard]] bool active(Role role, std::string id, std::string name, const Rect& box);
    [[nodiscard]] bool active(Node made);
    void press_mark(std::string_view id, const Rect& box, float radius);
    [[nodiscard]] bool in_sight(const Rect& box) const;

    [[nodiscard]] Rect clip() const { return clips_.back(); }

    void push_clip(const Rect& box);
    void pop_clip();

    /// Something that can be dragged: the point it was moved to since the last frame.
    [[nodiscard]] std::optional<Point> dragged(const std::string& key, const Rect& box);

    /// A region that scrolls: `draw` fills the column from its top.
    void scroll(const std::string& key, const Rect& box, base::FunctionRef<void()> draw);

    [[nodiscard]] std::int32_t layer() const { return layer_; }

    void set_layer(std::int32_t layer);

  private:
    Pen* pen_;
    Scene* scene_;
    const base::Region* region_;
    Memory* memory_;
    PageFrame frame_;
    Column column_;
    std::vector<Rect> clips_;
    std::int32_t layer_{0};
    std::uint64_t revision_{0};
    float page_width_{page::column_most};
    float page_lean_{page::lean_middle};
};

[[nodiscard]] Rect cut(const Rect& box, const Rect& by);
[[nodiscard]] Rect grown(const Rect& box, float by);

/// Draws a card behind whatever `draw` puts into it.
void card(Ui& ui, base::FunctionRef<void()> draw);

}  // namespace twoclocks::canvas

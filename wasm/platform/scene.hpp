// What is on the screen, in words: one list that serves touch, keyboard, screen reader and tests.
//
// Every widget draws itself and adds a Node. A tap looks for the topmost enabled Node under it;
// the mirror
// is the same list as JSON; a test finds a Node by role and name and taps its middle. So what can
// be
// tapped, spoken and tested is one thing.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::canvas {

enum class Role : std::uint8_t {
    heading,
    text,
    button,
    link,
    tab,
    field,
    list,
    list_item,
    choice,
    status,
    alert,
    image,
    dialog
};

struct Rect {
    float left{0};
    float top{0};
    float right{0};
    float bottom{0};

    [[nodiscard]] bool contains(float x, float y) const {
        return x >= left && x < right && y >= top && y < bottom;
    }

    [[nodiscard]] float width() const { return right - left; }

    [[nodiscard]] float height() const { return bottom - top; }
};

struct Node {
    Role role{Role::text};
    std::string id;     // unique on the page for what can be activated, else empty
    std::string name;   // accessible name
    std::string value;  // of a field; state of a choice ("on") or tab ("current")
    Rect box;           // whole box, CSS pixels
    Rect visible;       // box cut by the scroll region it is in; empty when scrolled out of sight
    bool enabled{true};
    std::int32_t level{0};     // of a heading
    std::int32_t layer{0};     // 0 page, 1 sheet: the highest layer on screen takes all taps
    std::int32_t set_size{0};  // of a list item in a long list, else 0
    std::int32_t position{0};  // 1-based in its list
    std::int32_t parent{-1};   // index of the list or dialog it stands in
    std::string describes;     // id of the field it says something about: a hint, a problem
    bool wrong{false};         // a field that cannot be taken as it stands
};

/// The nodes of one frame, and what was activated since the last.
class Scene {
  public:
    void begin();
    /// Adds a node and returns its index.
    std::int32_t add(Node node);

    void open_group(std::int32_t index) { group_ = index; }

    void close_group() { group_ = -1; }

    void set_layer(std::int32_t layer) { layer_ = layer; }

    [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }

    /// Topmost enabled node that can be activated under a point, -1 if none.
    [[nodiscard]] std::int32_t hit(float x, float y) const;

    /// Marks a node as activated: the widget with this id returns true in the next frame, once.
    void activate(std::string_view id) { pending_ = id; }

    [[nodiscard]] bool take(std::string_view id);
    /// Keyboard focus moves through nodes that can be activated, in order; empty is none.
    void move_focus(int step);

    [[nodiscard]] const std::string& focus() const { return focus_; }

    void set_focus(std::string_view id) { focus_ = id; }

    /// The mirror's JSON, boxes times `scale`:
    /// [{"r":role,"id":…,"n":name,"v":value,"b":[x,y,w,h],…}], only set fields; "c" is what is
    /// seen of a box that is cut, "out" says that nothing is.
    [[nodiscard]] std::string json(float scale = 1) const;

  private:
    std::vector<Node> nodes_;
    std::string pending_;
    std::string focus_;
    std::int32_t group_{-1};
    std::int32_t layer_{0};
};

}  // namespace twoclocks::canvas

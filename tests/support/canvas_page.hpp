// Lays screens out without a browser: Dear ImGui without a backend, a Scene, and every text that
// was drawn.
#pragma once

#include "catch_amalgamated.hpp"
#include "imgui.h"
#include "wasm/fonts.hpp"
#include "wasm/frame.hpp"
#include "wasm/widgets/ui.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace twoclocks::canvas::support {

inline std::string bytes_of(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

class CanvasPage {
  public:
    CanvasPage(float width, float height) : width_(width), height_(height) {
        context_ = ImGui::CreateContext();
        ImGui::GetIO().IniFilename = nullptr;
        // The page's own typeface where it was built; without it Dear ImGui's built-in one, which
        // is wider.
        fonts_.set(400, bytes_of(HOUSE_ROOT "/build/fonts/inter_400.otf"));
        fonts_.set(600, bytes_of(HOUSE_ROOT "/build/fonts/inter_600.otf"));
        fonts_.build(1);
    }

    ~CanvasPage() { ImGui::DestroyContext(context_); }

    CanvasPage(const CanvasPage&) = delete;
    CanvasPage& operator=(const CanvasPage&) = delete;

    /// Lays out until scroll positions have settled; the answer of the last round.
    Answer lay_out(const Screen& screen, Look look = Look::paper) {
        Answer answer = once(screen, look);
        for (int round = 0; round < 4 && memory_.unsettled; ++round)
            answer = once(screen, look);
        return answer;
    }

    /// Activates a node and gives what the page asks for.
    Answer press(const Screen& screen, const std::string& id) {
        lay_out(screen);
        scene_.activate(id);
        return once(screen, Look::paper);
    }

    [[nodiscard]] Scene& scene() { return scene_; }

    [[nodiscard]] Memory& memory() { return memory_; }

    [[nodiscard]] const std::vector<DrawnText>& texts() const { return texts_; }

    [[nodiscard]] const Node* find(const std::string& id) const {
        const auto& nodes = scene_.nodes();
        const auto node = std::find_if(
            nodes.begin(), nodes.end(), [&](const Node& each) { return each.id == id; });
        return node == nodes.end() ? nullptr : &*node;
    }

  private:
    Answer once(const Screen& screen, Look look) {
        ImGuiIO& io = ImGui::GetIO();
        io.DisplaySize = {width_, height_};
        io.DeltaTime = 1.0F / 60;
        ImGui::NewFrame();
        ImGui::SetNextWindowPos({0, 0});
        ImGui::SetNextWindowSize(io.DisplaySize);
        ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
        ImGui::Begin(
            "page", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground);
        scene_.begin();
        texts_.clear();
        memory_.regions.clear();
        memory_.boxes.clear();
        memory_.unsettled = false;
        Pen pen{*ImGui::GetWindowDrawList(), fonts_, look, 1};
        pen.record(&texts_);
        Ui ui{pen, scene_, region_, memory_, {{0, 0, width_, height_}, 0, 0}};
        Answer answer = draw_screen(ui, screen);
        ImGui::End();
        ImGui::PopStyleVar();
        ImGui::Render();
        return answer;
    }

    float width_;
    float height_;
    ImGuiContext* context_;
    Fonts fonts_;
    Scene scene_;
    Memory memory_;
    base::Region region_;
    std::vector<DrawnText> texts_;
};

/// What a page asks for when a node is pressed; the test fails when it is nothing of that kind.
template <class Wanted>
[[nodiscard]] Wanted pressed(const Screen& screen, const std::string& id) {
    CanvasPage page{390, 844};
    const Answer answer = page.press(screen, id);
    CAPTURE(id);
    REQUIRE(answer.has_value());
    const auto* wanted = std::get_if<Wanted>(&*answer);
    REQUIRE(wanted != nullptr);
    return *wanted;
}

}  // namespace twoclocks::canvas::support

// A phone with the App on it and a host that only takes notes.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "wasm/app.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace twoclocks::canvas::support {

/// Keeps what the App asks for; answers a commit or a step back when told to.
class NoteHost final : public Host {
  public:
    void commit(std::uint32_t token, std::string_view /*bytes*/) override {
        tokens.push_back(token);
    }

    void keep_snapshot(std::string_view /*bytes*/) override {}

    void hand_over_file(std::string_view name, std::string_view /*bytes*/) override { file = name; }

    void print_paper(std::string_view name, std::string_view) override { file = name; }

    void hand_over_locked(const LockRequest& request) override { file = request.name; }

    void unlock(const LockRequest& /*request*/) override {}

    void choose_file() override {}

    void fetch_demo() override {}

    void edit_field(const FieldRequest& request) override { edits.push_back(request); }

    void close_field() override { ++closed; }

    void mirror(std::string_view json) override {
        ++mirrors;
        last_mirror = json;
    }

    void announce(std::string_view /*text*/) override {}

    void push_page() override {}

    void go_back() override { ++backs; }

    void keep_setting(std::string_view /*name*/, std::string_view /*value*/) override {}

    void keep_draft(std::string_view /*text*/) override {}

    void start_new_version() override {}

    void wake(int frames) override { woken += frames; }

    std::vector<std::uint32_t> tokens;
    std::vector<FieldRequest> edits;
    std::string file;
    std::string last_mirror;
    int closed{0}, mirrors{0}, backs{0}, woken{0};
};

/// A phone with the App on it, past the first start.
class Phone {
  public:
    explicit Phone(float width = 390, float height = 844) : app(host) {
        app.set_font(400, bytes_of(HOUSE_ROOT "/build/fonts/inter_400.otf"));
        app.set_font(600, bytes_of(HOUSE_ROOT "/build/fonts/inter_600.otf"));
        app.set_device("0190a000-0000-7000-8000-000000000001");
        refresh();
        Viewport viewport;
        viewport.width_px = width;
        viewport.height_px = height;
        app.resize(viewport);
        app.loaded();
        draw();
        tap("accept-caution");
    }

    void refresh() {
        Outside outside;
        outside.today_day_number = 20782;
        outside.wall_ms = 20782LL * 86'400'000;
        outside.random_a = ++random;
        outside.random_b = 7 * random;
        app.refresh(outside);
    }

    void draw() {
        while (app.frame(now_ms += 16) && now_ms < 100'000) {
        }
    }

    [[nodiscard]] const Node* find(const std::string& id) const {
        const auto& nodes = app.scene().nodes();
        const auto node = std::find_if(
            nodes.begin(), nodes.end(), [&](const Node& each) { return each.id == id; });
        return node == nodes.end() ? nullptr : &*node;
    }

    void touch(PointerPhase phase, float x, float y) {
        app.pointer(phase, 1, x, y, now_ms += 10, PointerKind::touch);
    }

    void tap(const std::string& id) {
        const Node* node = find(id);
        CAPTURE(id);
        REQUIRE(node != nullptr);
        REQUIRE(node->visible.height() > 0);
        const float x = node->box.left + node->box.width() / 2;
        const float y = node->visible.top + node->visible.height() / 2;
        refresh();
        touch(PointerPhase::down, x, y);
        touch(PointerPhase::up, x, y);
        draw();
    }

    NoteHost host;
    App app;
    double now_ms{0};
    std::uint64_t random{0};
};

}  // namespace twoclocks::canvas::support

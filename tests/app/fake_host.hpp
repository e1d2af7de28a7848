// A host without a browser: it keeps what the app asks of it, answers when told to, and can refuse.
#pragma once

#include "wasm/app_state.hpp"

#include <string>
#include <utility>
#include <vector>

namespace twoclocks::canvas::support {

class FakeHost final : public Host {
  public:
    void commit(std::uint32_t token, std::string_view bytes) override {
        asked.emplace_back(token, std::string{bytes});
    }

    void keep_snapshot(std::string_view bytes) override { snapshots.emplace_back(bytes); }

    void hand_over_file(std::string_view name, std::string_view bytes) override {
        file_name = name;
        file = bytes;
    }

    void print_paper(std::string_view name, std::string_view html) override {
        printed_name = name;
        printed = html;
    }

    void hand_over_locked(const LockRequest& request) override { locked.push_back(request); }

    void unlock(const LockRequest& request) override { opened.push_back(request); }

    void choose_file() override { ++files_asked; }

    void fetch_demo() override {}

    void edit_field(const FieldRequest&) override {}

    void close_field() override {}

    void mirror(std::string_view) override {}

    void announce(std::string_view text) override { announced.emplace_back(text); }

    void push_page() override { ++pushed; }

    void go_back() override { ++backs; }

    void keep_setting(std::string_view name, std::string_view value) override {
        settings.emplace_back(name, value);
    }

    void keep_draft(std::string_view text) override {
        draft = text;
        ++drafts_kept;
    }

    void start_new_version() override {}

    void wake(int) override {}

    /// Answers every commit that waits, and lets Back arrive as a browser would.
    void answer(AppState& app, bool ok = true) {
        for (const auto& [token, bytes] : std::exchange(asked, {})) {
            if (ok) stored.push_back(bytes);
            app.committed(token, ok, ok ? "" : "full");
        }
        for (int left = std::exchange(backs, 0); left > 0; --left)
            app.back();
    }

    std::vector<std::pair<std::uint32_t, std::string>> asked;
    std::vector<std::string> stored;
    std::vector<std::string> snapshots;
    std::vector<std::string> announced;
    std::vector<std::pair<std::string, std::string>> settings;
    std::vector<LockRequest> locked;
    std::vector<LockRequest> opened;
    std::string file_name;
    std::string file;
    std::string printed_name;
    std::string printed;
    std::string draft;
    int drafts_kept{0};
    int pushed{0};
    int backs{0};
    int files_asked{0};
};

/// An app that has started with nothing stored, on a fixed day and with fixed random bits.
inline void start(AppState& app) {
    app.set_setting("caution", "accepted");
    app.set_device("test-device");
    app.refresh(
        {20'782, 1'795'600'000'000, 0x1234'5678'9ABC'DEF0U, 0x0FED'CBA9'8765'4321U});  // 2026-11-25
    app.loaded();
}

/// Adds the aircraft of the tests: 2,200 h or 12 years, new on 2016-06-15, meter at 1,000.0 h, 100
/// h a year.
inline void add_aircraft(AppState& app, const std::string& registration = "TEST-1") {
    app.apply(intent::OpenForm{FormKind::new_aircraft, {}});
    for (const auto& [field, text] :
         std::vector<std::pair<std::string, std::string>>{{"registration", registration},
                                                          {"limit_hours", "2200"},
                                                          {"limit_years", "12"},
                                                          {"anchor_on", "2016-06-15"},
                                                          {"reads", "1000.0"},
                                                          {"plan", "100"}}) {
        app.field_text(field, text);
    }
    app.apply(intent::SubmitForm{});
}

}  // namespace twoclocks::canvas::support

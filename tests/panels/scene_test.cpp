#include "wasm/platform/scene.hpp"

#include "catch_amalgamated.hpp"

#include <nlohmann/json.hpp>

using namespace twoclocks::canvas;

namespace {

Node button(std::string id, Rect box) {
    Node node;
    node.role = Role::button;
    node.id = std::move(id);
    node.name = node.id;
    node.box = box;
    node.visible = box;
    return node;
}

std::string node_at(const Scene& scene, float x, float y) {
    const std::int32_t index = scene.hit(x, y);
    return index < 0 ? "" : scene.nodes()[static_cast<std::uint32_t>(index)].id;
}

}  // namespace

TEST_CASE("a tap goes to the topmost enabled node that can be activated", "[canvas][scene]") {
    Scene scene;
    scene.begin();
    scene.add(button("below", {0, 0, 100, 100}));
    scene.add(button("above", {50, 50, 150, 150}));
    Node off = button("off", {0, 0, 40, 40});
    off.enabled = false;
    scene.add(off);
    Node words;
    words.name = "words";
    words.box = words.visible = {0, 0, 200, 200};
    scene.add(words);
    CHECK(node_at(scene, 75, 75) == "above");
    CHECK(node_at(scene, 20, 20) == "below");
    CHECK(node_at(scene, 149, 149) == "above");
    CHECK(node_at(scene, 150, 150).empty());
}

TEST_CASE("a node scrolled out of sight is not tapped", "[canvas][scene]") {
    Scene scene;
    scene.begin();
    Node half = button("half", {0, 0, 100, 100});
    half.visible = {0, 60, 100, 100};
    scene.add(half);
    CHECK(node_at(scene, 50, 50).empty());
    CHECK(node_at(scene, 50, 70) == "half");
}

TEST_CASE("a sheet takes all taps, beside it as well", "[canvas][scene]") {
    Scene scene;
    scene.begin();
    scene.add(button("page", {0, 0, 100, 400}));
    scene.set_layer(1);
    Node dialog;
    dialog.role = Role::dialog;
    dialog.box = dialog.visible = {0, 200, 100, 400};
    scene.add(dialog);
    scene.add(button("close", {0, 200, 100, 250}));
    CHECK(node_at(scene, 50, 100).empty());
    CHECK(node_at(scene, 50, 225) == "close");
    scene.begin();
    scene.add(button("page", {0, 0, 100, 400}));
    CHECK(node_at(scene, 50, 100) == "page");
}

TEST_CASE("an activated node answers once", "[canvas][scene]") {
    Scene scene;
    scene.activate("save");
    CHECK_FALSE(scene.take("other"));
    CHECK(scene.take("save"));
    CHECK_FALSE(scene.take("save"));
    scene.activate("");
    CHECK_FALSE(scene.take(""));
}

TEST_CASE("keyboard focus walks what can be activated, round and back", "[canvas][scene]") {
    Scene scene;
    scene.begin();
    scene.add(button("one", {0, 0, 10, 10}));
    Node off = button("off", {0, 0, 10, 10});
    off.enabled = false;
    scene.add(off);
    Node words;
    words.name = "words";
    scene.add(words);
    scene.add(button("two", {0, 0, 10, 10}));
    scene.move_focus(1);
    CHECK(scene.focus() == "one");
    scene.move_focus(1);
    CHECK(scene.focus() == "two");
    scene.move_focus(1);
    CHECK(scene.focus() == "one");
    scene.move_focus(-1);
    CHECK(scene.focus() == "two");
    scene.set_focus("gone");
    scene.move_focus(-1);
    CHECK(scene.focus() == "two");
    scene.begin();
    scene.move_focus(1);
    CHECK(scene.focus().empty());
}

TEST_CASE("the mirror is JSON whatever the words hold", "[canvas][scene]") {
    Scene scene;
    scene.begin();
    Node list;
    list.role = Role::list;
    list.name = "all";
    list.box = list.visible = {0, 0, 50, 50};
    const std::int32_t group = scene.add(list);
    scene.open_group(group);
    Node item = button("id \"1\"", {1.4F, 2.6F, 31.4F, 52.6F});
    item.role = Role::list_item;
    item.name = "quote \" back \\ slash, tab\t, line\n, bell \x07, caf\xC3\xA9 \xE2\x82\xAC";
    item.set_size = 300;
    item.position = 7;
    scene.add(item);
    scene.close_group();
    Node field = button("field", {0, 0, 1, 1});
    field.role = Role::field;
    field.enabled = false;
    field.visible = {};
    scene.add(field);
    Node title;
    title.role = Role::heading;
    title.level = 2;
    title.name = "title";
    title.box = title.visible = {0, 0, 9, 9};
    scene.add(title);

    const nlohmann::json json = nlohmann::json::parse(scene.json());
    REQUIRE(json.size() == 4);
    CHECK(json[0] == nlohmann::json{{"r", "list"}, {"n", "all"}, {"b", {0, 0, 50, 50}}});
    CHECK(json[1] == nlohmann::json{{"r", "list_item"},
                                    {"id", "id \"1\""},
                                    {"n", item.name},
                                    {"b", {1, 3, 30, 50}},
                                    {"s", 300},
                                    {"p", 7},
                                    {"g", 0}});
    CHECK(json[2] == nlohmann::json{{"r", "field"},
                                    {"id", "field"},
                                    {"n", "field"},
                                    {"v", ""},
                                    {"b", {0, 0, 1, 1}},
                                    {"off", 1},
                                    {"out", 1}});
    CHECK(json[3] ==
          nlohmann::json{{"r", "heading"}, {"n", "title"}, {"b", {0, 0, 9, 9}}, {"l", 2}});
}

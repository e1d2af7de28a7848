// The page's program: everything happens in calls from the shell, see platform/browser.cpp.
int main() {
    return 0;
}

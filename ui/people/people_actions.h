#pragma once

namespace chalk::ui::shell {
class MainWindow;
}

namespace chalk::ui::people {

/// Lets lists be taken in and duplicates be found from every page. Belongs to a window that has both pages.
void addPeopleActions(shell::MainWindow& window);

}  // namespace chalk::ui::people

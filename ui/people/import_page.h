#pragma once

#include "ui/people/import_desk.h"
#include "ui/shell/page.h"

class QLabel;
class QProgressBar;
class QScrollArea;
class QStackedWidget;

namespace chalk::ui::common {
class ActHistory;
class ActionButton;
class Banner;
class Dialogs;
class EmptyState;
class Look;
class PageHeader;
}

namespace chalk::ui::people {

class ColumnsForm;
class PeopleForm;

/// What the page shows itself with. All of it outlives the page.
struct ImportPageLook {
    const common::Look& look;
    common::ActHistory& acts;
    common::Dialogs& dialogs;
};

/// Takes people and their past in from lists: files, how they are read, who is meant, and in.
class ImportPage : public shell::Page {
    Q_OBJECT

public:
    ImportPage(ImportPageLook look, ImportServices services, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override;
    void open(const shell::Place& place) override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    /// Goes a step back, or stops what is under way.
    bool closeOrClear() override;

    [[nodiscard]] ImportDesk& desk() { return m_desk; }

private:
    void buildSteps();
    void buildFoot();
    void chooseFile();
    void goOn();
    void showStep();
    void tellImported(const store::PeopleImported& imported);
    void tellTrouble(const QString& reason);
    void say(const QString& lead, const QString& text, bool isTrouble);
    [[nodiscard]] QString footText() const;

    ImportPageLook m_look;
    ImportDesk m_desk;
    ImportDesk::Step m_shownStep = ImportDesk::Step::Files;
    common::PageHeader* m_header;
    common::Banner* m_banner;
    QStackedWidget* m_steps;
    common::EmptyState* m_empty;
    ColumnsForm* m_columns;
    PeopleForm* m_people;
    QLabel* m_note;
    QProgressBar* m_progress;
    common::ActionButton* m_add;
    common::ActionButton* m_back;
    common::ActionButton* m_next;
};

}  // namespace chalk::ui::people

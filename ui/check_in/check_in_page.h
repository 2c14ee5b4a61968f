#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/check_in/check_in_desk.h"
#endif
#include "ui/shell/page.h"

class QLabel;
class QStackedLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Dialogs;
class EmptyState;
class LoadingRows;
class Look;
class PageHeader;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::check_in {

class DecisionForm;
class EvidencePane;
class QueueList;
class QueueModel;

/// What the page works with. Everything outlives the page.
struct CheckInServices {
    const common::Look& look;
    const common::Clock& clock;
    common::ActHistory& acts;
    common::Dialogs& dialogs;
    const lifts::Catalogue& catalogue;
};

/// The check-in of a week: who is due and why, what is known of each lift, what is decided. Decisions are undone by Ctrl+Z.
class CheckInPage : public shell::Page {
    Q_OBJECT

public:
    CheckInPage(const CheckInServices& services, std::unique_ptr<CheckInSource> source, QWidget* parent = nullptr);
    ~CheckInPage() override;

    [[nodiscard]] QString title() const override { return tr("Check-in"); }
    /// Opens the client of the place, due or not.
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] std::optional<shell::OpenClient> openClient() const override;
    [[nodiscard]] bool canPrint() const override;
    /// Asks for the report of the open client.
    void print() override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

    [[nodiscard]] const CheckInDesk& desk() const { return *m_desk; }
    [[nodiscard]] DecisionForm* form() const { return m_form; }
    [[nodiscard]] EvidencePane* evidence() const { return m_evidence; }
    [[nodiscard]] const QueueModel& queueModel() const { return *m_model; }

Q_SIGNALS:
    /// A progress report of this client is wanted.
    void reportAsked(base::ClientId client);
    /// Those of everybody who was decided, in the order of the queue.
    void reportsAsked(const std::vector<base::ClientId>& clients);

private:
    void buildHeader();
    void buildBody();
    void buildQueue();
    void buildCentre();
    void buildForm();
    void buildActions();
    void addPageAction(const QString& text, const QList<QKeySequence>& keys, std::function<void()> act);

    void showQueue();
    void showPage();
    void showEmpty();
    void showFailure(const QString& message);
    void decide();
    void stepLift(int by);
    void openEditor(checkin::ChoiceKind kind);
    void copySummary();
    void printReports();

    CheckInServices m_services;
    CheckInDesk* m_desk;
    QueueModel* m_model;
    bool m_isNarrow = false;

    common::PageHeader* m_header = nullptr;
    common::ActionButton* m_copy = nullptr;
    common::ActionButton* m_report = nullptr;
    common::ActionButton* m_previous = nullptr;
    common::ActionButton* m_next = nullptr;
    common::Banner* m_trouble = nullptr;
    common::Panel* m_queuePanel = nullptr;
    QueueList* m_list = nullptr;
    QStackedLayout* m_centre = nullptr;
    EvidencePane* m_evidence = nullptr;
    common::LoadingRows* m_loading = nullptr;
    common::EmptyState* m_empty = nullptr;
    common::ActionButton* m_printReports = nullptr;
    DecisionForm* m_form = nullptr;
};

}  // namespace chalk::ui::check_in

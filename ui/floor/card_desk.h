#pragma once

#include "ui/common/act_history.h"
#include "ui/common/clock.h"
#include "ui/floor/floor_presenter.h"
#include "ui/print/card_dialog.h"

#include <QObject>
#include <QPointer>

namespace chalk::ui::floor {

/// What the desk works with. All of it outlives the desk.
struct CardDeskServices {
    FloorPresenter& presenter;
    const common::Clock& clock;
    common::ActHistory& acts;
    print::CardDialogServices dialog;
};

/// Opens the cards that a page asked for, and notes the sessions whose cards were made.
class CardDesk : public QObject {
    Q_OBJECT

public:
    explicit CardDesk(const CardDeskServices& services, QObject* parent = nullptr);
    ~CardDesk() override;

    /// The card of a client's session today, else the next one, else one that nobody booked.
    void showClient(base::ClientId client, QWidget* parent);
    /// The client's progress report up to today, in the same dialog as the card.
    void showReport(base::ClientId client, QWidget* parent);
    /// The progress reports of these clients up to today, one after the other: one preview, one print. Nothing where there are none.
    void showReports(const std::vector<base::ClientId>& clients, QWidget* parent);
    void showSession(const FloorClient& client, QWidget* parent);
    void showDay(base::Date day, QWidget* parent);
    /// The sheet of everybody in the slot of a session; of the whole day where there is no such session.
    void showGroup(base::Date day, base::SessionId session, QWidget* parent);
    /// The cards of a day, with those of its week laid out first.
    void showWeek(base::Date day, QWidget* parent);
    /// The dialog that is open; null for none.
    [[nodiscard]] print::CardDialog* dialog() const { return m_dialog; }

Q_SIGNALS:
    /// Sessions count as printed now.
    void studioChanged();

private:
    [[nodiscard]] std::vector<FloorClient> openClientsOf(const std::vector<RunSlot>& run, QString& failure);
    /// `weekOf` is whose week is offered beside it, and whose report; everybody's week and no report for none.
    void show(const std::vector<FloorClient>& clients, base::Date day, base::ClientId weekOf, const QString& failure, QWidget* parent);
    [[nodiscard]] std::vector<sessions::CardContent> readWeek(base::Date day, base::ClientId client);
    [[nodiscard]] std::vector<print::Sheet> readReport(base::ClientId client, print::PaperSize paper, bool hasInitialsOnly);
    void note(const std::vector<sessions::Session>& sessions);

    CardDeskServices m_services;
    QPointer<print::CardDialog> m_dialog;
    std::vector<sessions::Session> m_weekSessions;  ///< of the week that the dialog has read
};

}  // namespace chalk::ui::floor

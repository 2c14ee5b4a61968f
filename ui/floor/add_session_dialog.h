#pragma once

#include "ui/floor/floor_case.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QSpinBox;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// A session that nobody planned: who comes, when, for how long and with whom. The name is typed in part, Enter books the first that fits.
class AddSessionDialog : public QDialog {
    Q_OBJECT

public:
    /// `minute`: what is suggested as its start.
    AddSessionDialog(const common::Look& look, BookingChoices choices, base::Date day, int minute, QWidget* parent = nullptr);

    /// What is chosen; nothing where nobody is.
    [[nodiscard]] std::optional<sessions::Session> session() const;

private:
    void build(int minute);
    void showFitting();
    /// The coach of whoever is chosen, until a coach is chosen by hand.
    void followClient();
    bool eventFilter(QObject* watched, QEvent* event) override;

    const common::Look& m_look;
    BookingChoices m_choices;
    base::Date m_day;
    bool m_isCoachChosen = false;
    QLineEdit* m_name;
    QListWidget* m_list;
    QComboBox* m_time;
    QSpinBox* m_minutes;
    QComboBox* m_coach;
    QLabel* m_none;
};

}  // namespace chalk::ui::floor

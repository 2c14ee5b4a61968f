#pragma once

#include <QWidget>

class QHBoxLayout;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::board {

struct ClientCase;

/// The clearance and the cautions of a client, to be read.
class HealthTab : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the tab.
    explicit HealthTab(const common::Look& look, QWidget* parent = nullptr);

    /// Reads the case now; nothing of it is kept.
    void setCase(const ClientCase& client);

Q_SIGNALS:
    /// A step of onboarding is wanted, by its key: what changed later goes through the same screens.
    void stepAsked(const QString& step);

private:
    QHBoxLayout* stepButtons();
    void addText(common::Panel& panel, const QString& text, const char* role);

    const common::Look& m_look;
    common::Panel* m_clearance;
    common::Panel* m_cautions;
};

}  // namespace chalk::ui::board

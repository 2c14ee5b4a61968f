#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/check_in/check_in_source.h"
#include "ui/common/panel.h"
#endif

#include <array>

class QComboBox;
class QHBoxLayout;
class QLabel;

namespace chalk::ui::common {
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::check_in {

class EvidenceChart;
class StageTag;

/// What is known of a client and one lift: who it is, and five charts over the same weeks.
class EvidencePane : public common::Panel {
    Q_OBJECT

public:
    /// Both outlive the pane.
    EvidencePane(const common::Look& look, common::Dialogs& dialogs, QWidget* parent = nullptr);

    /// Shows one lift of a page; a client without lifts keeps the charts that need none.
    void setPage(const CheckInCase& page, std::size_t lift);
    /// Single, stages, readiness, volume, sessions.
    [[nodiscard]] const std::array<EvidenceChart*, 5>& charts() const { return m_charts; }
    void setRoom(bool isNarrow);

Q_SIGNALS:
    void liftChosen(int lift);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildHead();
    void buildCharts();
    void addRow(EvidenceChart* left, EvidenceChart* right, int stretch);
    void dress();
    /// As much of the words beside the name as has room.
    void fitAbout();

    const common::Look& m_look;
    bool m_isNarrow = false;
    QLabel* m_name = nullptr;
    QLabel* m_about = nullptr;
    QString m_aboutText;
    QComboBox* m_lifts = nullptr;
    StageTag* m_stage = nullptr;
    std::array<EvidenceChart*, 5> m_charts{};
};

}  // namespace chalk::ui::check_in

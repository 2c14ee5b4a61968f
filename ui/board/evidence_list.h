#pragma once

#include <QWidget>

#include <vector>

class QGridLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::board {

struct EvidenceLine;

/// The checks before a stage, each with a tick or an empty box and the fact at the right.
class EvidenceList : public QWidget {
    Q_OBJECT

public:
    explicit EvidenceList(const common::Look& look, QWidget* parent = nullptr);
    void setLines(const std::vector<EvidenceLine>& lines);

private:
    const common::Look& m_look;
    QGridLayout* m_grid;
};

}  // namespace chalk::ui::board

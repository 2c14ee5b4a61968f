#pragma once

#include "ui/common/theme.h"

#include <QFrame>

#include <optional>
#include <vector>

class QButtonGroup;

namespace chalk::ui::common {

/// One of the answers of a segmented choice.
struct Segment {
    QString text;
    std::optional<Signal> signal = {};  ///< the colours when it is chosen; nothing: the colour of the primary button
};

/// A few answers side by side of which one is chosen, or none at first. Left and Right move, the digits 1 to 9 choose.
class SegmentedChoice : public QFrame {
    Q_OBJECT

public:
    /// `name` is what is asked, for screen readers.
    SegmentedChoice(const QString& name, const std::vector<Segment>& segments, QWidget* parent = nullptr);

    /// Closer answers, for many of them or little room.
    void setCompact();
    /// -1 where nothing is chosen.
    [[nodiscard]] int chosen() const;
    /// Chooses without telling; -1 for none.
    void setChosen(int index);

    /// Takes an answer out of sight, or brings it back. The first and the last of those in sight keep their round ends.
    void setAvailable(int index, bool isAvailable);

Q_SIGNALS:
    /// The person chose another one.
    void choiceMade(int index);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool choose(int index);
    /// Tab stops once: at the chosen answer, at the first where none is chosen.
    void placeTabStop();

    QButtonGroup* m_group;
};

}  // namespace chalk::ui::common

#pragma once

#include <QWidget>

class QTimer;

namespace chalk::ui::common {

class Look;

/// What stands in for a list that takes longer than 300 ms: grey lines and grey ladders. Nothing turns, nothing blinks.
class LoadingRows : public QWidget {
    Q_OBJECT

public:
    explicit LoadingRows(const Look& look, QWidget* parent = nullptr);

    /// Shows itself after 300 ms unless `end` comes first.
    void begin();
    void end();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Look& m_look;
    QTimer* m_patience;
};

}  // namespace chalk::ui::common

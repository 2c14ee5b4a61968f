#pragma once

#include <QLineEdit>

namespace chalk::ui::common {

class Look;

/// A field to type a filter into: a lens before the text and the key that leads here at its end. Esc clears it.
class SearchField : public QLineEdit {
    Q_OBJECT

public:
    /// `prompt` is shown while it is empty and names it for screen readers; `keys` may be empty.
    SearchField(const Look& look, const QString& prompt, const QString& keys, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void dress();

    const Look& m_look;
    QString m_keys;
};

}  // namespace chalk::ui::common

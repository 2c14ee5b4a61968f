#pragma once

#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QSet>

#include <functional>
#include <memory>
#include <vector>

class QTimer;

namespace chalk::ui::shell {

/// Tells a card that a scanner types from a person who types: `CR1 `, the code of a session and Enter, faster than fingers go, while
/// any window of the program has the focus. Such keys never reach a field or a shortcut. Keys that begin like a card and do not
/// go on like one are given back in their order to what had the focus: nothing that a person types is lost, at most it is late.
class ScannerListener : public QObject {
    Q_OBJECT

public:
    /// Between two characters of a scanner there are at most so many milliseconds.
    static constexpr int kMostGapMs = 35;
    /// Between the last of them and Enter there may be so many: nobody types a code so fast and then waits for that.
    static constexpr int kMostEndGapMs = 700;
    /// A code is no longer than so many characters.
    static constexpr int kLongestCode = 64;
    /// When a key was pressed, in milliseconds.
    using Stamp = std::function<qint64(const QKeyEvent&)>;

    /// Listens to the whole application from now on.
    explicit ScannerListener(QObject* parent = nullptr);
    ScannerListener(Stamp stamp, QObject* parent);
    ~ScannerListener() override;

    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    /// A card was read; `code` is what stands behind `CR1 `, as typed. Said once the keys are dealt with.
    void codeScanned(const QString& code);

private:
    struct HeldKey {
        QPointer<QObject> target;  ///< what it goes to when it is given back
        std::unique_ptr<QKeyEvent> event;
    };

    [[nodiscard]] bool takePress(QObject* watched, const QKeyEvent& key);
    [[nodiscard]] bool takeRelease(QObject* watched, const QKeyEvent& key);
    /// Whether the key begins a card.
    [[nodiscard]] bool begins(const QKeyEvent& key) const;
    /// Whether it comes soon enough and is what comes next: a character of the card or the Enter that ends it.
    [[nodiscard]] bool goesOn(const QKeyEvent& key) const;
    [[nodiscard]] bool ends(const QKeyEvent& key) const;
    void hold(QObject* watched, const QKeyEvent& key);
    void finish(const QKeyEvent& enter);
    void giveBack();
    void losePatience();

    Stamp m_stamp;
    std::vector<HeldKey> m_held;  ///< presses and their releases, in order
    QString m_text;               ///< of the presses
    qint64 m_last = 0;            ///< the stamp of the last press
    QSet<int> m_read;             ///< keys of a card whose releases are still to come
    QTimer* m_patience;
    bool m_isLastCall = false;
    bool m_isGivingBack = false;
};

}  // namespace chalk::ui::shell

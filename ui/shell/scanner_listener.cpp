#include "ui/shell/scanner_listener.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr QLatin1String kCardPrefix("CR1 ");
constexpr int kPatienceMs = 25;  // beyond the longest gap: a key that is late to be looked at was not typed late

ScannerListener::Stamp windowSystemStamp()
{
    QElapsedTimer running;
    running.start();
    return [running](const QKeyEvent& key) { return key.timestamp() != 0 ? static_cast<qint64>(key.timestamp()) : running.elapsed(); };
}

bool isModifierKey(const QKeyEvent& key)
{
    return key.key() == Qt::Key_Shift || key.key() == Qt::Key_CapsLock || key.key() == Qt::Key_AltGr || key.key() == Qt::Key_NumLock;
}

/// The one character that the key writes; none where it is a command.
QChar characterOf(const QKeyEvent& key)
{
    const bool isCommand = (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != Qt::NoModifier;
    return isCommand || key.text().size() != 1 || !key.text().front().isPrint() ? QChar() : key.text().front();
}

/// What a key is given back to: where it would have gone.
QObject* targetOf(QObject* watched)
{
    const bool isOnItsWay = watched->isWindowType() && QApplication::activePopupWidget() == nullptr && QApplication::focusWidget() != nullptr;
    return isOnItsWay ? QApplication::focusWidget() : watched;
}

}  // namespace

ScannerListener::ScannerListener(QObject* parent) : ScannerListener(windowSystemStamp(), parent) {}

ScannerListener::ScannerListener(Stamp stamp, QObject* parent) : QObject(parent), m_stamp(std::move(stamp)), m_patience(new QTimer(this))
{
    m_patience->setSingleShot(true);
    connect(m_patience, &QTimer::timeout, this, &ScannerListener::losePatience);
    qApp->installEventFilter(this);
}

ScannerListener::~ScannerListener() = default;

bool ScannerListener::eventFilter(QObject* watched, QEvent* event)
{
    if (m_isGivingBack) {
        return false;
    }
    const QEvent::Type type = event->type();
    if (type == QEvent::KeyPress) {
        return takePress(watched, *static_cast<QKeyEvent*>(event));
    }
    if (type == QEvent::KeyRelease) {
        return takeRelease(watched, *static_cast<QKeyEvent*>(event));
    }
    if (type == QEvent::ShortcutOverride && goesOn(*static_cast<QKeyEvent*>(event))) {
        event->accept();  // a card is no shortcut: its keys come as plain presses, which are held
        return true;
    }
    const bool isOtherKey = type == QEvent::ShortcutOverride && !isModifierKey(*static_cast<QKeyEvent*>(event));
    if (isOtherKey || type == QEvent::MouseButtonPress || type == QEvent::FocusOut || type == QEvent::WindowDeactivate) {
        giveBack();
    }
    return false;
}

bool ScannerListener::takePress(QObject* watched, const QKeyEvent& key)
{
    m_read.remove(key.key());
    if (isModifierKey(key)) {
        return false;
    }
    if (goesOn(key)) {
        if (ends(key)) {
            finish(key);
        } else {
            hold(watched, key);
        }
        return true;
    }
    giveBack();
    if (!begins(key)) {
        return false;
    }
    hold(watched, key);
    return true;
}

bool ScannerListener::takeRelease(QObject* watched, const QKeyEvent& key)
{
    if (m_read.remove(key.key())) {
        return true;
    }
    const auto isItsPress = [&key](const HeldKey& held) { return held.event->type() == QEvent::KeyPress && held.event->key() == key.key(); };
    if (std::none_of(m_held.begin(), m_held.end(), isItsPress)) {
        return false;
    }
    m_held.push_back({targetOf(watched), std::unique_ptr<QKeyEvent>(key.clone())});
    return true;
}

bool ScannerListener::begins(const QKeyEvent& key) const
{
    // A capital, or what a capital becomes while the lock for capitals is on.
    const QChar character = characterOf(key);
    const bool isCapital = character.isUpper() || key.modifiers().testFlag(Qt::ShiftModifier);
    return !key.isAutoRepeat() && isCapital && character.toUpper() == kCardPrefix.front();
}

bool ScannerListener::goesOn(const QKeyEvent& key) const
{
    const int mostGap = ends(key) ? kMostEndGapMs : kMostGapMs;
    if (m_held.empty() || key.isAutoRepeat() || m_stamp(key) - m_last > mostGap) {
        return false;
    }
    if (m_text.size() < kCardPrefix.size()) {
        return characterOf(key).toUpper() == kCardPrefix.at(m_text.size());
    }
    return ends(key) || (!characterOf(key).isNull() && m_text.size() < kCardPrefix.size() + kLongestCode);
}

bool ScannerListener::ends(const QKeyEvent& key) const
{
    return m_text.size() > kCardPrefix.size() && (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter);
}

void ScannerListener::hold(QObject* watched, const QKeyEvent& key)
{
    m_held.push_back({targetOf(watched), std::unique_ptr<QKeyEvent>(key.clone())});
    m_text += characterOf(key);
    m_last = m_stamp(key);
    m_isLastCall = false;
    m_patience->start((m_text.size() > kCardPrefix.size() ? kMostEndGapMs : kMostGapMs) + kPatienceMs);
}

void ScannerListener::finish(const QKeyEvent& enter)
{
    m_read = {enter.key()};
    for (const HeldKey& held : m_held) {
        if (held.event->type() == QEvent::KeyPress) {
            m_read.insert(held.event->key());
        } else {
            m_read.remove(held.event->key());
        }
    }
    m_held.clear();
    m_patience->stop();
    const QString code = m_text.mid(kCardPrefix.size());
    m_text.clear();
    // What follows may close the window that this key is on its way to.
    QMetaObject::invokeMethod(this, [this, code] { Q_EMIT codeScanned(code); }, Qt::QueuedConnection);
}

void ScannerListener::giveBack()
{
    m_patience->stop();
    m_text.clear();
    const std::vector<HeldKey> held = std::move(m_held);
    m_held.clear();
    m_isGivingBack = true;
    for (const HeldKey& key : held) {
        if (key.target != nullptr) {
            key.event->setAccepted(true);
            QCoreApplication::sendEvent(key.target, key.event.get());
        }
    }
    m_isGivingBack = false;
}

void ScannerListener::losePatience()
{
    // Keys that wait behind a busy moment are looked at before the last call is over.
    if (m_isLastCall) {
        giveBack();
    } else {
        m_isLastCall = true;
        m_patience->start(0);
    }
}

}  // namespace chalk::ui::shell

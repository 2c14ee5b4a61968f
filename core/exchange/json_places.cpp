#include "core/exchange/json_places.h"

#include "core/exchange/json_walk.h"

#include <QString>

namespace chalk::exchange {

namespace {

/// Looks for the value that a path names.
class SearchForPath : public JsonWalk {
public:
    SearchForPath(const QByteArray& text, const std::string& path) : JsonWalk(text), m_wanted(path) {}
    [[nodiscard]] qsizetype nearest() const { return m_nearest; }

protected:
    void meetValue(qsizetype offset) override
    {
        const std::string here = path();
        const bool isAround = m_wanted.compare(0, here.size(), here) == 0 &&
                              (here.size() == m_wanted.size() || here.empty() || m_wanted[here.size()] == '.' || m_wanted[here.size()] == '[');
        if (isAround) {
            m_nearest = offset;
        }
        if (here.size() == m_wanted.size() && isAround) {
            end();
        }
    }

private:
    const std::string& m_wanted;
    qsizetype m_nearest = 0;
};

}  // namespace

JsonPlace placeAt(const QByteArray& text, qsizetype offset)
{
    const QByteArray before = text.left(offset);
    const qsizetype lineStart = before.lastIndexOf('\n') + 1;
    return {static_cast<int>(before.count('\n')) + 1, static_cast<int>(QString::fromUtf8(before.mid(lineStart)).size()) + 1};
}

JsonPlace placeOf(const QByteArray& text, const std::string& path)
{
    SearchForPath search(text, path);
    search.run();
    return placeAt(text, search.nearest());
}

}  // namespace chalk::exchange

#pragma once

#include <cstdlib>
#include <stdexcept>

#include <unistd.h>

namespace chalk::test {

/// While it lives, this process has the rights of somebody who owns nothing, where it was started by root.
class WithoutRights {
public:
    WithoutRights() : m_wasRoot(::geteuid() == 0)
    {
        if (m_wasRoot && (::setresgid(65534, 65534, 0) != 0 || ::setresuid(65534, 65534, 0) != 0)) {
            throw std::runtime_error("the rights cannot be given up");
        }
    }
    ~WithoutRights()
    {
        if (m_wasRoot && (::setresuid(0, 0, 0) != 0 || ::setresgid(0, 0, 0) != 0)) {
            std::abort();
        }
    }
    WithoutRights(const WithoutRights&) = delete;
    WithoutRights& operator=(const WithoutRights&) = delete;

private:
    bool m_wasRoot;
};

}  // namespace chalk::test

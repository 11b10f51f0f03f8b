#include "gauge_desk/gauge_choice.h"

#include "wording/wording.h"

#include <QDir>
#include <QFileInfo>
#include <QSerialPortInfo>

namespace hammerline::gauge_desk {

namespace {

constexpr const char *deviceKey = "gauge/device";
constexpr const char *baudKey = "gauge/baud";
constexpr const char *frameKey = "gauge/frame";
constexpr const char *patternKey = "gauge/pattern";
constexpr const char *unitKey = "gauge/unit";
constexpr const char *wantedKey = "gauge/wanted";

QSerialPort::Parity parityOf(QChar letter)
{
    return letter == u'E' ? QSerialPort::EvenParity : letter == u'O' ? QSerialPort::OddParity : QSerialPort::NoParity;
}

/// The link under /dev/serial/by-id that leads to the port: ttyUSB0 may be another adapter after replugging.
QString steadyName(const QSerialPortInfo &port)
{
    const QDir links(QStringLiteral("/dev/serial/by-id"));
    for (const QFileInfo &link : links.entryInfoList(QDir::Files | QDir::System | QDir::NoDotAndDotDot))
        if (link.canonicalFilePath() == port.systemLocation())
            return link.filePath();
    return port.portName();
}

} // namespace

gauge_input::LineSettings GaugeChoice::line() const
{
    return {.device = device,
            .baud = baud,
            .dataBits = frame.startsWith(u'7') ? QSerialPort::Data7 : QSerialPort::Data8,
            .parity = parityOf(frame.at(1)),
            .stopBits = frame.endsWith(u'2') ? QSerialPort::TwoStop : QSerialPort::OneStop};
}

GaugeChoice GaugeChoice::from(const QSettings &settings)
{
    GaugeChoice choice;
    choice.device = settings.value(deviceKey).toString();
    choice.wanted = settings.value(wantedKey).toBool() && !choice.device.isEmpty();
    if (const int baud = settings.value(baudKey).toInt(); baud > 0)
        choice.baud = baud;
    if (const QString frame = settings.value(frameKey).toString(); knownFrames().contains(frame))
        choice.frame = frame;
    const gauge_input::LinePattern kept{settings.value(patternKey).toString()};
    if (!kept.expression.isEmpty() && gauge_input::faultOf(kept).isEmpty())
        choice.pattern.expression = kept.expression;
    for (const units::Unit unit : knownUnits())
        if (settings.value(unitKey).toString() == units::symbolOf(unit))
            choice.pattern.bareUnit = unit;
    return choice;
}

void GaugeChoice::store(QSettings &settings) const
{
    settings.setValue(deviceKey, device);
    settings.setValue(baudKey, baud);
    settings.setValue(frameKey, frame);
    settings.setValue(patternKey, pattern.expression);
    settings.setValue(unitKey, QString(units::symbolOf(pattern.bareUnit)));
    settings.setValue(wantedKey, wanted);
}

const QStringList &knownFrames()
{
    static const QStringList frames{"8N1", "8E1", "8O1", "8N2", "7E1", "7O1", "7N2", "7E2", "7O2"};
    return frames;
}

const QList<int> &knownSpeeds()
{
    static const QList<int> speeds{300, 600, 1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};
    return speeds;
}

const QList<units::Unit> &knownUnits()
{
    static const QList<units::Unit> all{units::Unit::Millimetre, units::Unit::Inch, units::Unit::Mil,
                                        units::Unit::Gram};
    return all;
}

QList<Port> portsNow()
{
    QList<Port> ports;
    for (const QSerialPortInfo &port : QSerialPortInfo::availablePorts()) {
        const QString what = port.description();
        ports << Port{steadyName(port), what.isEmpty() ? port.portName() : port.portName() + " · " + what};
    }
    return ports;
}

Understood understand(const QByteArray &line, const gauge_input::LinePattern &pattern)
{
    using units::Dimension;
    const bool grams = pattern.bareUnit == units::Unit::Gram;
    const units::TypedForm first{grams ? Dimension::Mass : Dimension::Length, pattern.bareUnit, true};
    const auto reading = gauge_input::readGaugeLine(line, pattern, first);
    if (reading)
        return {true, reading.value().typed};
    const units::TypedForm other{grams ? Dimension::Length : Dimension::Mass, pattern.bareUnit, true};
    if (const auto second = gauge_input::readGaugeLine(line, pattern, other))
        return {true, second.value().typed};
    return {false, wording::faultsText(reading.faults())};
}

} // namespace hammerline::gauge_desk

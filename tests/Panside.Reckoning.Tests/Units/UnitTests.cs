using System.Reflection;
using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Units;

public class UnitTests
{
    public static TheoryData<string, string> Units => [.. AllUnits().Select(u => (u.Type.Name, u.Unit))];

    [Theory]
    [MemberData(nameof(Units))]
    public void Every_unit_leads_there_and_back(string type, string unit)
    {
        (_, _, Func<double, object> from, Func<object, double> to) = Find(type, unit);
        double most = unit == "MassFraction" ? 1 : 100;
        Gen.Double[0, most].Holds(x => Math.Abs(to(from(x)) - x) <= 1e-10);
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void No_unit_takes_what_is_no_number(string type, string unit)
    {
        Func<double, object> from = Find(type, unit).From;
        Assert.All([double.NaN, double.PositiveInfinity, double.NegativeInfinity], x =>
            Assert.IsType<ArgumentOutOfRangeException>(Assert.ThrowsAny<TargetInvocationException>(() => from(x)).InnerException));
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void Order_is_that_of_the_numbers_in_any_unit(string type, string unit)
    {
        Func<double, object> from = Find(type, unit).From;
        double most = unit == "MassFraction" ? 1 : 100;
        Gen.Select(Gen.Double[0, most * 0.98], Gen.Double[most * 0.001, most * 0.02]).Holds((x, more) =>
            ((IComparable)new Comparison(from(x + more))).CompareTo(from(x)) > 0);
    }

    [Fact]
    public void Definitions_hold()
    {
        Within.Relative(1e-12).HoldsOver(
        [
            new("water boils in °F", 212, Temperature.FromCelsius(100).Fahrenheit),
            new("nothing is colder, K", 273.15, Temperature.FromCelsius(0).Kelvin),
            new("a degree of difference, °F", 1.8, TemperatureRise.FromCelsius(1).Fahrenheit),
            new("a foot, in", 12, Length.FromFeet(1).Inches),
            new("a US gallon, cubic inches", 231, Volume.FromUsGallons(1).Liters / Math.Pow(0.254, 3)),
            new("a US gallon, quarts", 4, Volume.FromUsGallons(1).UsQuarts),
            new("an imperial gallon, quarts", 4, Volume.FromImperialGallons(1).ImperialQuarts),
            new("a kilogram, lb", 1 / 0.45359237, Mass.FromKilograms(1).Pounds),
            new("a square foot, m²", 0.3048 * 0.3048, Area.FromSquareFeet(1).SquareMeters),
            new("an inch of mercury, hPa", 33.86389, Pressure.FromInchesOfMercury(1).Hectopascals),
        ]);
        Within.Relative(1e-9).Holds(0.002326, Energy.FromBtu(1).Megajoules / Mass.FromPounds(1).Kilograms);
    }

    private static IEnumerable<(Type Type, string Unit)> AllUnits() =>
        from type in typeof(Temperature).Assembly.GetExportedTypes()
        where type.Namespace == typeof(Temperature).Namespace
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static)
        where method.Name.StartsWith("From", StringComparison.Ordinal)
        select (type, method.Name["From".Length..]);

    private static (Type Type, string Unit, Func<double, object> From, Func<object, double> To) Find(string type, string unit)
    {
        Type found = typeof(Temperature).Assembly.GetType($"{typeof(Temperature).Namespace}.{type}")!;
        MethodInfo from = found.GetMethod("From" + unit)!;
        PropertyInfo to = found.GetProperty(unit)!;
        return (found, unit, x => from.Invoke(null, [x])!, q => (double)to.GetValue(q)!);
    }

    /// <summary>A quantity that compares through its own generic comparison.</summary>
    private sealed class Comparison(object quantity) : IComparable
    {
        public int CompareTo(object? other) =>
            (int)quantity.GetType().GetMethod(nameof(CompareTo))!.Invoke(quantity, [other])!;
    }
}

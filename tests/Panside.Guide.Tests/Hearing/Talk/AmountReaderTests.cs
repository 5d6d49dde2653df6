using Panside.Guide.Hearing.Talk;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing.Talk;

/// <summary>Numbers as people say them, each written here by hand as a number.</summary>
public class AmountReaderTests
{
    [Theory]
    [InlineData("tank 22 and a half", 22.5, null)]
    [InlineData("twenty two and a half gallons", 22.5, Unit.Gallon)]
    [InlineData("twenty-two gal left", 22, Unit.Gallon)]
    [InlineData("an inch and a half deep", 1.5, Unit.Inch)]
    [InlineData("inch and a half", 1.5, Unit.Inch)]
    [InlineData("tank ok, inch and three quarters", 1.75, Unit.Inch)]
    [InlineData("1 1/2\" deep", 1.5, Unit.Inch)]
    [InlineData("1-1/2 in", 1.5, Unit.Inch)]
    [InlineData("1½ in", 1.5, Unit.Inch)]
    [InlineData("two and three quarters inches", 2.75, Unit.Inch)]
    [InlineData("three quarters of an inch", 0.75, Unit.Inch)]
    [InlineData("half an inch", 0.5, Unit.Inch)]
    [InlineData("a quarter inch under two", 1.75, Unit.Inch)]
    [InlineData("an eighth shy of two inches", 1.875, Unit.Inch)]
    [InlineData("two seventeen point four", 217.4, null)]
    [InlineData("two hundred and ten degrees", 210, null)]
    [InlineData("two oh nine f", 209, Unit.DegreeFahrenheit)]
    [InlineData("a hundred and three degrees celsius", 103, Unit.DegreeCelsius)]
    [InlineData("one oh two point five c", 102.5, Unit.DegreeCelsius)]
    [InlineData("7lbs of maple", 7, Unit.Pound)]
    [InlineData("seven pounds eight ounces", 7.5, Unit.Pound)]
    [InlineData("forty fucking seven gallons", 47, Unit.Gallon)]
    [InlineData("a couple of quarts", 2, Unit.Quart)]
    [InlineData("two dozen gallons", 24, Unit.Gallon)]
    [InlineData("half a dozen pounds", 6, Unit.Pound)]
    [InlineData("twenty nine six on the glass", 29.6, null)]
    [InlineData("two eleven three", 211.3, null)]
    [InlineData("twenty two seven", 22.7, null)]
    [InlineData("fourty galons", 40, Unit.Gallon)]
    [InlineData("one and a quarter inchs", 1.25, Unit.Inch)]
    [InlineData("2 percent sugar", 2, Unit.Percent)]
    [InlineData("29.8 inches of mercury", 29.8, Unit.InchOfMercury)]
    [InlineData("one thousand five hectopascal", 1005, Unit.Hectopascal)]
    [InlineData("five below", -5, null)]
    [InlineData("minus 3 C", -3, Unit.DegreeCelsius)]
    [InlineData("12,5 L", 12.5, Unit.Liter)]
    [InlineData("22 in the tank", 22, null)]
    [InlineData("one comma two liter", 1.2, Unit.Liter)]
    [InlineData("about a pint and a half", 0.75, Unit.Quart)]
    [InlineData("three pints", 1.5, Unit.Quart)]
    [InlineData("got qt n half", 1.5, Unit.Quart)]
    [InlineData("216.2 not 216.8", 216.2, null)]
    [InlineData("7 pounds, not 9 pounds", 7, Unit.Pound)]
    [InlineData("+6 gal", 6, Unit.Gallon)]
    public void A_number_is_read_as_it_is_said(string text, double value, Unit? unit)
    {
        var amount = Assert.Single(Pieces(text), piece => piece.Amount is not null).Amount!;
        Assert.Equal((value, unit), (double.Round(amount.Value, 4), amount.Unit));
    }

    [Theory]
    [InlineData("half past ten", 630)]
    [InlineData("22:30", 1350)]
    [InlineData("10 pm", 1320)]
    [InlineData("ten thirty pm", 1350)]
    [InlineData("quarter to eleven", 645)]
    [InlineData("midnight", 0)]
    [InlineData("10 o'clock", 600)]
    [InlineData("ten past eight", 490)]
    [InlineData("twenty five past nine", 565)]
    [InlineData("10.15 pm", 1335)]
    [InlineData("half past midnight", 30)]
    public void A_time_of_day_is_no_amount_of_anything(string text, double minutes)
    {
        var amount = Assert.Single(Pieces(text)).Amount!;
        Assert.Equal((minutes, AmountHint.Clock), (amount.Value, amount.Hint));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a bit of a mess")]
    [InlineData("half asleep")]
    [InlineData("threw in three splits")]
    [InlineData("that was the last one")]
    [InlineData("tank 1,234")]
    [InlineData("and and and a")]
    [InlineData("/ / 1/0")]
    public void What_is_no_number_is_none(string text) => Assert.DoesNotContain(Pieces(text), piece => piece.Amount is { Value: > 0 });

    [Theory]
    [InlineData("by half eleven", 690)]
    [InlineData("home at twenty to nine", 520)]
    public void After_a_word_of_time_a_time_of_day_may_be_said_shorter(string text, double minutes)
    {
        var amount = Assert.Single(Pieces(text), piece => piece.Amount is not null).Amount!;
        Assert.Equal((minutes, AmountHint.Clock), (amount.Value, amount.Hint));
    }

    private static IReadOnlyList<Piece> Pieces(string text) => KnownTalk.Ear("en")!.Pieces(text);
}

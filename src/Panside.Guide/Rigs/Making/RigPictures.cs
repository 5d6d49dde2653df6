namespace Panside.Guide.Rigs.Making;

/// <summary>What to measure, and where, in signs of ASCII: no row over 76 columns, no picture over 10 rows.</summary>
internal static class RigPictures
{
    public const string Units = """
          us         gallons (3.785 L), inches, pounds
          metric     liters, centimeters, kilograms
          imperial   gallons (4.546 L), inches, pounds
        """;

    public const string Length = """
        from above:
                    |<------------ length, inside ------------->|
                    +-------------------------------------------+
         fire       |                                           |   .---.
         door  [ ]  |                   pan                     |  ( stack )
                    |                                           |   '---'
                    +-------------------------------------------+
         Of two pans: the one with the draw-off.
        """;

    public const string Width = """
        from above:
                    +-------------------------------------------+ ---
         fire       |                                           |  ^
         door  [ ]  |                   pan                     |  | width, inside
                    |                                           |  v
                    +-------------------------------------------+ ---
        """;

    public const string Draft = """
              blower: yes                          blower: no
                         ||  stack                            ||  stack
            +------------+|                      +------------+|
            |   fire      |                      |   fire      |
            |-------------|  grate               |-------------|  grate
         ==>|   ash       |                   -->|   ash       |
            +-------------+                      +-------------+
         a fan blows in under the grate       the stack draws the air in
        """;

    public const string Float = """
              float: yes                           float: no
         from the tank                        from the tank
             |                                    |
             +--[valve]                           X  a valve opened by hand,
                     \                            |  or a pail
                      \_(float)                   v
         ~~~~~~~~~~~~~~~~~~~~~ sap            ~~~~~~~~~~~~~~~~~~~~~ sap
         opens by itself as the sap falls
        """;

    public const string Pail = """
               \_______/
                |~~~~~|     one pail: what goes in at once
                |     |     Fill it from the tank's mark to the next,
                |_____|     or weigh it: a gallon of sap is 8 1/2 lb.
        """;

    public const string Boils = """
           the mark in the tank now      ---  ~~~~~~~~~
                                          |
           the mark an hour later        ---  ~~~~~~~~~
         At a full boil, with the pan held at one depth.
        """;

    public const string Draw = """
             valve: a tap          ladle: by hand        pour: all at once
            |      |              |      /              \      \
            |~~~~~~|=[tap]        |~~~~~/|               \~~~~~~\__ .
            +------+   v          +----u-+                +------+   v
        """;

    public const string Has = """
          thermometer     hangs in the draw-off
          hydrometer      floats in a full cup of syrup
          refractometer   shows the sugar of a cooled drop
          sight glass     a tube beside the pan that shows its depth
          lid             covers the still pan overnight
          finishing pot   a pot on a stove, in which syrup is finished
        """;

    public const string Behind = """
        from above:  one pan                 two pans
                   +-----------+           +-----------+--------------+
             door  |           |     door  |  with the |   behind:    |
              [ ]  |           |      [ ]  |  draw-off |  sap comes in|
                   +-----------+           +-----------+--------------+
        """;

    public const string Flues = """
        cut across:  flat                    3 flues
             |~~~~~~~~~~~~~~~~~|       |~~~~~~~~~~~~~~~~~|
             |                 |       |                 |
             +-----------------+       +-+  +---+  +---+ +  ---  the floor
                                         |  |   |  |   | |   |   how deep
                                         +--+   +--+   +-+  ---  they hang
         Factor: so many times its floor the fire sees, flues and all.
        """;

    public const string Rear = """
        the pan behind, from the side:
               |~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~|  ---
               |              sap               |   |  depth, over the flues
               +--+  +--+  +--+  +--+  +--+  +--+  ---
                  |  |  |  |  |  |  |  |  |  |
                  +--+  +--+  +--+  +--+  +--+
        """;

    public const string Channels = """
        from above:  3 channels                1 channel: no walls inside
           sap in                                 sap in
             v                                      v
         +-------------------------------+      +-------------------------+
         |   -->                         |      |                         |
         |-----------------------------  |      |                         |
         |                        <--    |      |                         |
         |  -----------------------------|      |                         |
         |   -->                         |      |                         |
         +-----------------------[draw]--+      +-------------------[draw]+
        """;

    public const string Depth = """
        from the side:
               |                                |
               |                                |
               |~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~|  ---
               |              sap               |   |  depth, while it boils
               +--------------------------------+  ---
         Stand a stick on the bottom, and measure what is wet.
        """;

    public const string Wall = """
        from the side:
               |                                |  ---
               |                                |   |
               |~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~|   |  wall, from bottom to rim
               |              sap               |   |
               +--------------------------------+  ---
        """;

    public const string Brick = """
        from the door:
               +------- pan --------+
             [=|                    |=]
             [=|        fire        |=]    [=] brick: sides, back and
             [=|_______ grate ______|=]        floor under the pan,
             [========================]        all that the fire heats
         A full brick, 9 x 4 1/2 x 2 1/2 in: about 7 1/2 lb (3.4 kg).
         A thin one, half as thick: about half of that.
        """;

    public const string Tank = """
               +-------------+  --- the mark where it is full
               |             |   |
               |  head tank  |   |  what it holds
               |             |   |
               +------+------+  ---
                      |
                      +----> to the pan
        """;

    public const string Charge = """
                 ___________
                /__________/|
               /__________/||      one charge: what goes in at one
               |   |   |  |||      opening of the fire door
               |___|___|__|/
         Stand on a scale with the armload, then without it.
        """;

    public const string Interval = """
           wood            wood            wood            wood
             |               |               |               |
          ---+---------------+---------------+---------------+---> time
             |<-- interval ->|
        """;

    public const string Wood = """
          dry        split and under a roof for two summers   20 % water
          half dry   for one summer                           35 %
          green      felled this winter                       70 %
         Water is told as a part of the dry wood's weight.
        """;

    public const string Altitude = """
                       __________
                      | sugarhouse|
          ____________|__________ |___      ---
         /                                   |  height above the sea
        ~~~~~~~~~~~~~~~~~~ sea ~~~~~~~~~~   ---
        """;

    public const string Name = """
          +----------------------------------------------------------+
          | STEADY BOIL              NAME   1 h since start   18:05  |
          |                                                          |
          The name stands at the top of the screen and in each record.
        """;
}

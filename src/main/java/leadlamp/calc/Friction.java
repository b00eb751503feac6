package leadlamp.calc;

/** Friction of faces that are clamped together, where nobody gives their own figure. */
public final class Friction {
    /** Clean dry steel on steel. From memory: VDI 2230 part 1, table of interface friction; its range is about 0.1 to 0.23. */
    public static final double STEEL_ON_STEEL = 0.15;
    /** Clean anodised or bare light metal on steel. Common practice, no source. */
    public static final double LIGHT_METAL = 0.12;
    /** A cup or flat point of a grub screw on a shaft. Common practice, no source: a low value, a dimple does better. */
    public static final double GRUB_SCREW = 0.15;
    /** Clutch facing, dry, at the low side. Common practice, no source. */
    public static final double CLUTCH_LOW = 0.25;
    /** How far each may be wrong, as a share, 95 %. */
    public static final double DOUBT = 0.35;

    private Friction() {
    }
}

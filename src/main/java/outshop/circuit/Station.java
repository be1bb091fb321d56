package outshop.circuit;

/** The stations of the power path, from charger to wheels, where findings hang. */
public enum Station {
  CHARGER("charger"),
  JACK("charging jack"),
  PACK("pack"),
  FUSE("fuse"),
  SWITCH("main switch"),
  WIRING("wiring"),
  RADIO("radio"),
  DECODER("decoder"),
  MOTOR("motor"),
  LIGHTS("lights and functions"),
  SOUND("sound"),
  LOCOMOTIVE("locomotive"),
  PLAN("plan");

  private final String words;

  Station(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}

package outshop.rules;

import org.kie.api.conf.ConfigurationKey;
import org.kie.api.conf.OptionKey;
import org.kie.api.conf.OptionsConfiguration;
import org.kie.internal.builder.KnowledgeBuilderConfiguration;
import org.kie.internal.builder.conf.KnowledgeBuilderOption;
import org.kie.internal.builder.conf.MultiValueKieBuilderOption;
import org.kie.internal.builder.conf.PropertySpecificOption;
import org.kie.internal.builder.conf.SingleValueKieBuilderOption;

/**
 * How rules are laid out for facts that never change: the engine need not work out which of a
 * fact's properties each rule reads, which takes it a look at every method of every kind of fact.
 */
final class UnchangingFacts implements KnowledgeBuilderConfiguration {

  @Override
  @SuppressWarnings("unchecked")
  public <C extends SingleValueKieBuilderOption> C getOption(OptionKey<C> key) {
    if (!PropertySpecificOption.KEY.equals(key)) {
      throw unasked(key.name());
    }
    return (C) PropertySpecificOption.DISABLED;
  }

  @Override
  public ClassLoader getClassLoader() {
    return UnchangingFacts.class.getClassLoader();
  }

  @Override
  public void makeImmutable() {
    // Nothing in it can be changed.
  }

  @Override
  public <C extends KnowledgeBuilderOption> void setOption(C option) {
    throw unasked(option.toString());
  }

  @Override
  public <
          X extends
              OptionsConfiguration<
                      KnowledgeBuilderOption,
                      SingleValueKieBuilderOption,
                      MultiValueKieBuilderOption>>
      X as(ConfigurationKey<X> key) {
    throw unasked(key.toString());
  }

  @Override
  public boolean setProperty(String name, String value) {
    throw unasked(name);
  }

  @Override
  public String getProperty(String name) {
    throw unasked(name);
  }

  private static UnsupportedOperationException unasked(String what) {
    return new UnsupportedOperationException("compiled rules ask for nothing else: " + what);
  }
}

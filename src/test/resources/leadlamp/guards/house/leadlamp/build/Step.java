package leadlamp.build;

import leadlamp.cli.Main;

class Step {
}

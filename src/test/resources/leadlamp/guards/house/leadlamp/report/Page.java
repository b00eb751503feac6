package leadlamp.report;

import leadlamp.words.Back;

// leadlamp.cli.Main is only spoken of here
class Page {
    String said = "leadlamp.cli.Main";
    leadlamp.build.Step step;
}

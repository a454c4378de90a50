//! What is seen and touched, one component a file.

mod also;
mod bar;
mod card;
mod cautions;
mod details;
mod drawing;
mod evidence;
mod field;
mod figures;
mod finding_body;
mod glance;
mod icon;
mod joint_body;
mod live;
mod measure;
mod notices;
mod on_hand;
mod options;
mod overlay;
mod parts;
mod remedies;
mod row;
mod select;
mod settings;
mod sheet;
mod silhouette;
mod step;
mod steps;
mod supply;
mod tabs;
mod title;
mod verdict;
mod whole;

pub use sheet::sheet;

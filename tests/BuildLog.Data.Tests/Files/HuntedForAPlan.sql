PRAGMA application_id = 1112305511;
BEGIN TRANSACTION;
CREATE TABLE IF NOT EXISTS "__EFMigrationsLock" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY,
    "Timestamp" TEXT NOT NULL
);
CREATE TABLE IF NOT EXISTS "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
) STRICT;
INSERT INTO __EFMigrationsHistory VALUES('20261125180654_FirstRecord','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261125193628_WholeMarriage','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261125221700_MonthsOfSwaps','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261125225032_ChangesAndSearch','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261126014805_LooseDays','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261126125048_FrontTyresAndLowStep','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261126152312_ReadingsOfEverySession','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261127015828_PartsThatAreGone','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261127171200_WhatTheVehicleIs','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261128022340_HuntedForAPlan','10.0.15');
CREATE TABLE IF NOT EXISTS "Gears" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Gears" PRIMARY KEY AUTOINCREMENT,
    "TransmissionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "RatioSi" REAL NOT NULL,
    "RatioSource" TEXT NOT NULL,
    "RatioText" TEXT NOT NULL,
    "RatioUnit" TEXT NOT NULL,
    CONSTRAINT "CK_Gears_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Gears_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Gears_Ratio" CHECK (("RatioSi" IS NULL) + ("RatioUnit" IS NULL) + ("RatioText" IS NULL) + ("RatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Gears_RatioSi" CHECK ("RatioSi" BETWEEN 0.3 AND 20.0),
    CONSTRAINT "CK_Gears_RatioSource" CHECK ("RatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_Gears_Components_TransmissionId" FOREIGN KEY ("TransmissionId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO Gears VALUES(1,2,1,'1',3.5400000000000000355,'MakersData','3.54','');
INSERT INTO Gears VALUES(2,2,2,'2',2.1200000000000001065,'MakersData','2.12','');
INSERT INTO Gears VALUES(3,2,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(4,2,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(5,8,1,'1',3.4100000000000001421,'MakersData','3.41','');
INSERT INTO Gears VALUES(6,8,2,'2',2.0,'MakersData','2.00','');
INSERT INTO Gears VALUES(7,8,3,'3',1.3700000000000001065,'MakersData','1.37','');
INSERT INTO Gears VALUES(8,8,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(9,15,1,'1',3.5400000000000000355,'MakersData','3.54','');
INSERT INTO Gears VALUES(10,15,2,'2',2.1200000000000001065,'MakersData','2.12','');
INSERT INTO Gears VALUES(11,15,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(12,15,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(13,16,1,'1',3.3199999999999998401,'MakersData','3.32','');
INSERT INTO Gears VALUES(14,16,2,'2',2.0499999999999998223,'MakersData','2.05','');
INSERT INTO Gears VALUES(15,16,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(16,16,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(17,16,5,'5',0.81000000000000005329,'MakersData','0.81','');
INSERT INTO Gears VALUES(18,22,1,'1',2.9799999999999999822,'Tag','2.98','');
INSERT INTO Gears VALUES(19,22,2,'2',1.9399999999999999467,'Tag','1.94','');
INSERT INTO Gears VALUES(20,22,3,'3',1.3400000000000000799,'Tag','1.34','');
INSERT INTO Gears VALUES(21,22,4,'4',1.0,'Tag','1.00','');
INSERT INTO Gears VALUES(22,26,1,'1',4.0499999999999998223,'MakersData','4.05','');
INSERT INTO Gears VALUES(23,26,2,'2',2.2200000000000001953,'MakersData','2.22','');
INSERT INTO Gears VALUES(24,26,3,'3',1.4199999999999999289,'MakersData','1.42','');
INSERT INTO Gears VALUES(25,26,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(26,34,1,'1',3.5,'OwnersWord','3.5','');
INSERT INTO Gears VALUES(27,34,2,'2',2.1000000000000000888,'OwnersWord','2.1','');
INSERT INTO Gears VALUES(28,34,3,'3',1.3999999999999999111,'OwnersWord','1.4','');
INSERT INTO Gears VALUES(29,34,4,'4',1.0,'OwnersWord','1.0','');
CREATE TABLE IF NOT EXISTS "Readings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY AUTOINCREMENT,
    "SessionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_Readings_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Readings_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "FK_Readings_Sessions_SessionId" FOREIGN KEY ("SessionId") REFERENCES "Sessions" ("Id")
) STRICT;
INSERT INTO Readings VALUES(1,1,1,'1:2238mm');
INSERT INTO Readings VALUES(2,1,2,'3:6 715 mm');
INSERT INTO Readings VALUES(3,1,3,'5:11.19 m');
INSERT INTO Readings VALUES(4,2,1,'10:23.7');
INSERT INTO Readings VALUES(5,2,2,'10:23 3/4');
INSERT INTO Readings VALUES(6,2,3,'10:23 3/4');
INSERT INTO Readings VALUES(7,3,1,'1:2028mm');
INSERT INTO Readings VALUES(8,3,2,'2:4057mm');
INSERT INTO Readings VALUES(9,4,1,'10:39');
INSERT INTO Readings VALUES(10,4,2,'20:78');
INSERT INTO Readings VALUES(11,5,1,'2:12 ft 8 in');
INSERT INTO Readings VALUES(12,5,2,'4:25 ft 4 in');
INSERT INTO Readings VALUES(13,5,3,'6:38 ft');
INSERT INTO Readings VALUES(14,6,1,'1:1936mm');
INSERT INTO Readings VALUES(15,6,2,'3:5807 mm');
INSERT INTO Readings VALUES(16,6,3,'5:9.68 m');
INSERT INTO Readings VALUES(17,7,1,'10:8.1');
INSERT INTO Readings VALUES(18,7,2,'20:16.2');
INSERT INTO Readings VALUES(19,8,1,'3:5 1/4');
INSERT INTO Readings VALUES(20,9,1,'1:1876mm');
INSERT INTO Readings VALUES(21,9,2,'2:3751mm');
INSERT INTO Readings VALUES(22,9,3,'4:7.503 m');
INSERT INTO Readings VALUES(23,10,1,'1:2531mm');
INSERT INTO Readings VALUES(24,10,2,'3:7596mm');
INSERT INTO Readings VALUES(25,11,1,'20:41');
INSERT INTO Readings VALUES(26,11,2,'20:41');
INSERT INTO Readings VALUES(27,11,3,'20:41 1/2');
INSERT INTO Readings VALUES(28,12,1,'10:20 1/2');
INSERT INTO Readings VALUES(29,12,2,'20:41');
CREATE TABLE IF NOT EXISTS "ShaftPieces" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_ShaftPieces" PRIMARY KEY AUTOINCREMENT,
    "PropshaftId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Yokes" TEXT NULL,
    "LengthSi" REAL NULL,
    "LengthSource" TEXT NULL,
    "LengthText" TEXT NULL,
    "LengthUnit" TEXT NULL,
    "OuterSi" REAL NULL,
    "OuterSource" TEXT NULL,
    "OuterText" TEXT NULL,
    "OuterUnit" TEXT NULL,
    "PlanSi" REAL NULL,
    "PlanSource" TEXT NULL,
    "PlanText" TEXT NULL,
    "PlanUnit" TEXT NULL,
    "SideSi" REAL NULL,
    "SideSource" TEXT NULL,
    "SideText" TEXT NULL,
    "SideUnit" TEXT NULL,
    "WallSi" REAL NULL,
    "WallSource" TEXT NULL,
    "WallText" TEXT NULL,
    "WallUnit" TEXT NULL,
    CONSTRAINT "CK_ShaftPieces_Length" CHECK (("LengthSi" IS NULL) + ("LengthUnit" IS NULL) + ("LengthText" IS NULL) + ("LengthSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_LengthSi" CHECK ("LengthSi" BETWEEN 0.05 AND 4.0),
    CONSTRAINT "CK_ShaftPieces_LengthSource" CHECK ("LengthSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Ordinal" CHECK ("Ordinal" BETWEEN 1 AND 3),
    CONSTRAINT "CK_ShaftPieces_Outer" CHECK (("OuterSi" IS NULL) + ("OuterUnit" IS NULL) + ("OuterText" IS NULL) + ("OuterSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_OuterSi" CHECK ("OuterSi" BETWEEN 0.005 AND 0.3),
    CONSTRAINT "CK_ShaftPieces_OuterSource" CHECK ("OuterSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Plan" CHECK (("PlanSi" IS NULL) + ("PlanUnit" IS NULL) + ("PlanText" IS NULL) + ("PlanSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_PlanSi" CHECK ("PlanSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_ShaftPieces_PlanSource" CHECK ("PlanSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Side" CHECK (("SideSi" IS NULL) + ("SideUnit" IS NULL) + ("SideText" IS NULL) + ("SideSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_SideSi" CHECK ("SideSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_ShaftPieces_SideSource" CHECK ("SideSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Wall" CHECK (("WallSi" IS NULL) + ("WallUnit" IS NULL) + ("WallText" IS NULL) + ("WallSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_WallSi" CHECK ("WallSi" BETWEEN 0.0002 AND 0.15),
    CONSTRAINT "CK_ShaftPieces_WallSource" CHECK ("WallSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Yokes" CHECK ("Yokes" IN ('InLine', 'QuarterTurn')),
    CONSTRAINT "FK_ShaftPieces_Components_PropshaftId" FOREIGN KEY ("PropshaftId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO ShaftPieces VALUES(1,12,1,'InLine',1.2399999999999999911,'Measured','1240 mm','mm',0.076200000000000003841,'Measured','76.2 mm','mm',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0021000000000000003039,'Measured','2.1 mm','mm');
CREATE TABLE IF NOT EXISTS "Vehicles" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Vehicles" PRIMARY KEY AUTOINCREMENT,
    "BodyClass" TEXT NULL,
    "ChassisNumber" TEXT NOT NULL,
    "DrivesInFront" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "NameKey" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "OdometerUnit" TEXT NOT NULL,
    "Owner" TEXT NOT NULL,
    "Registration" TEXT NOT NULL,
    "RollingClass" TEXT NULL,
    "State" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL, "Description" TEXT NOT NULL DEFAULT '',
    CONSTRAINT "CK_Vehicles_BodyClass" CHECK ("BodyClass" IN ('saloon, 1945–60', 'large saloon, 1960–79', 'saloon, 1960–79', 'saloon, 1980–95', 'coupé, 1964–74', 'pickup with separate wings, 1935–55', 'pickup, 1955–72', 'pickup, 1973–91', 'raised 4×4 pickup', 'compact pickup, 1975–95', 'rear-engined van, 1950–79', 'box van, 1970–95', 'short 4×4, upright screen', 'station-wagon 4×4, 1970–99')),
    CONSTRAINT "CK_Vehicles_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Vehicles_NameKey" CHECK (length(trim("NameKey")) > 0),
    CONSTRAINT "CK_Vehicles_OdometerUnit" CHECK ("OdometerUnit" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Vehicles_RollingClass" CHECK ("RollingClass" IN ('modern radial', 'radial, 1970–89', 'bias ply', 'mud tread at road pressure', 'loose gravel', 'medium hard soil', 'sand')),
    CONSTRAINT "CK_Vehicles_State" CHECK ("State" IN ('Planned', 'InBuild', 'OnTheRoad', 'LaidUp', 'HandedOver'))
) STRICT;
INSERT INTO Vehicles VALUES(1,NULL,'WX-PU-20417',0,'Brindle','BRINDLE','Half-ton pickup, bare frame when it came. Wants to cross the county without shouting.','Kilometres','Agnes Thorley','BT 417',NULL,'InBuild','01A22102-0B6B-7A35-9308-04B67DB4AEDB',0,'half-ton pick-up of 1971');
INSERT INTO Vehicles VALUES(2,NULL,'OT 5529',0,'Ottery','OTTERY','Open tourer. Handed over with its sheet in September 2024.','Miles','Rufus Keel','KEE 55',NULL,'HandedOver','01A22102-1543-790D-AA1D-414F81A307F5',0,'open tourer of 1955');
INSERT INTO Vehicles VALUES(3,'saloon, 1980–95','TN-88-3105',0,'Tansy','TANSY','Estate, daily use.','Miles','Dorrit Ames','D 3105 A','modern radial','OnTheRoad','01A22102-16C3-7BF3-92EE-6A94334BEA5E',0,'estate of 1988, five doors');
INSERT INTO Vehicles VALUES(4,NULL,'QL 70 0093',0,'Quillon','QUILLON','Fastback coupe, shell painted, going together.','Kilometres','Bastian Orme','',NULL,'InBuild','01A22102-185A-7BCD-B471-23EFA165D2C4',0,'fastback coupe of 1970');
INSERT INTO Vehicles VALUES(5,NULL,'HD4-1177-L',0,'Haldor','HALDOR','Long-wheelbase 4×4, carries the mowers.','Kilometres','Ilse Marrick','IM 1177',NULL,'InBuild','01A22102-18FB-72D8-B3DD-8BEB48121118',0,'long-wheelbase 4×4 of 1977');
INSERT INTO Vehicles VALUES(6,NULL,'not found yet',0,'Pellow','PELLOW','Panel van, for the shop itself once the others are out.','Kilometres','the shop','',NULL,'Planned','01A22102-1A56-7278-95A1-88F0E0DEBB8F',0,'panel van, about 1976');
CREATE TABLE IF NOT EXISTS "Deadlines" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Deadlines" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NULL,
    "What" TEXT NOT NULL,
    "Day" TEXT NOT NULL,
    "Done" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Deadlines_Day" CHECK ("Day" IS date("Day")),
    CONSTRAINT "CK_Deadlines_Done" CHECK ("Done" IS date("Done")),
    CONSTRAINT "CK_Deadlines_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Deadlines_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Deadlines VALUES(1,1,'test station, first look','2025-05-15',NULL,'01A22102-1536-7CC4-9033-E031F2C641E4',0);
CREATE TABLE IF NOT EXISTS "Decisions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Decisions" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Why" TEXT NOT NULL,
    "AgreedBy" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Decisions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Decisions_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Decisions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Decisions VALUES(1,1,'2024-10-27','axle between 3.23 and 3.49 instead of still taller tyres','taller tyres would reach the arches and read the speedometer low','Agnes Thorley','01A22102-153A-7941-A452-8365EE840EF4',0);
CREATE TABLE IF NOT EXISTS "IdentityNumbers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_IdentityNumbers" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NULL,
    "ComponentId" INTEGER NULL,
    "Identified" TEXT NOT NULL,
    "Number" TEXT NOT NULL,
    "Where" TEXT NOT NULL,
    "ReadBy" TEXT NOT NULL,
    "ReadEarliest" TEXT NULL,
    "ReadLatest" TEXT NULL,
    "ReadText" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_IdentityNumbers_Identified" CHECK ("Identified" IN ('Chassis', 'Body', 'Engine', 'Gearbox', 'TransferCase', 'FrontAxle', 'RearAxle', 'Casting', 'DateCode', 'Other')),
    CONSTRAINT "CK_IdentityNumbers_Number" CHECK (length(trim("Number")) > 0),
    CONSTRAINT "CK_IdentityNumbers_Owner" CHECK (("VehicleId" IS NULL) + ("ComponentId" IS NULL) = 1),
    CONSTRAINT "CK_IdentityNumbers_Read" CHECK (("ReadText" IS NOT NULL OR ("ReadEarliest" IS NULL AND "ReadLatest" IS NULL)) AND ("ReadEarliest" IS NULL OR "ReadLatest" IS NULL OR "ReadEarliest" <= "ReadLatest")),
    CONSTRAINT "CK_IdentityNumbers_ReadEarliest" CHECK ("ReadEarliest" IS date("ReadEarliest")),
    CONSTRAINT "CK_IdentityNumbers_ReadLatest" CHECK ("ReadLatest" IS date("ReadLatest")),
    CONSTRAINT "FK_IdentityNumbers_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_IdentityNumbers_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Notes" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Notes" PRIMARY KEY AUTOINCREMENT,
    "About" TEXT NOT NULL,
    "AboutUid" TEXT NOT NULL,
    "Date" TEXT NOT NULL,
    "Title" TEXT NOT NULL,
    "Body" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Notes_About" CHECK ("About" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')),
    CONSTRAINT "CK_Notes_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Notes_Text" CHECK (length(trim("Title")) + length(trim("Body")) > 0)
) STRICT;
INSERT INTO Notes VALUES(1,'Supplier','01A22102-09B4-7ECC-BD4E-2368A88E2FE0','2024-10-26','tags','Tags there have been moved between housings. Count before paying.','01A22102-09C7-7FC7-82EE-C40FD9A59844',0);
INSERT INTO Notes VALUES(2,'Job','01A22102-14BE-7C60-9630-5E485F8DF09C','2024-10-27','before lifting','Two stands under the frame, not the axle. Ask Piet for a Saturday.','01A22102-153E-7AEE-8BDE-37C076F45EE7',0);
CREATE TABLE IF NOT EXISTS "OdometerChanges" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_OdometerChanges" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "How" TEXT NOT NULL,
    "Day" TEXT NOT NULL,
    "Order" INTEGER NOT NULL,
    "Reason" TEXT NOT NULL,
    "FirstOdometerMetres" REAL NULL,
    "FirstOdometerText" TEXT NULL,
    "FirstOdometerUnit" TEXT NULL,
    "LastOdometerMetres" REAL NULL,
    "LastOdometerText" TEXT NULL,
    "LastOdometerUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_OdometerChanges_Day" CHECK ("Day" IS date("Day")),
    CONSTRAINT "CK_OdometerChanges_FirstOdometer" CHECK (("FirstOdometerMetres" IS NULL) + ("FirstOdometerUnit" IS NULL) + ("FirstOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_OdometerChanges_FirstOdometerMetres" CHECK ("FirstOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_OdometerChanges_How" CHECK ("How" IN ('Replaced', 'Reset', 'RolledOver')),
    CONSTRAINT "CK_OdometerChanges_LastOdometer" CHECK (("LastOdometerMetres" IS NULL) + ("LastOdometerUnit" IS NULL) + ("LastOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_OdometerChanges_LastOdometerMetres" CHECK ("LastOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_OdometerChanges_Starts" CHECK ("FirstOdometerMetres" IS NOT NULL),
    CONSTRAINT "FK_OdometerChanges_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Plans" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Plans" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Date" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Plans_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Plans_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Plans_Rejected" CHECK ("State" <> 'Rejected' OR length(trim("Reason")) > 0),
    CONSTRAINT "CK_Plans_State" CHECK ("State" IN ('Open', 'Kept', 'Rejected')),
    CONSTRAINT "FK_Plans_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Retorques" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Retorques" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Initials" TEXT NOT NULL,
    "TorqueSi" REAL NULL,
    "TorqueSource" TEXT NULL,
    "TorqueText" TEXT NULL,
    "TorqueUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Retorques_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Retorques_Initials" CHECK (length(trim("Initials")) > 0),
    CONSTRAINT "CK_Retorques_Torque" CHECK (("TorqueSi" IS NULL) + ("TorqueUnit" IS NULL) + ("TorqueText" IS NULL) + ("TorqueSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Retorques_TorqueSi" CHECK ("TorqueSi" BETWEEN 0.0 AND 5000.0),
    CONSTRAINT "CK_Retorques_TorqueSource" CHECK ("TorqueSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Retorques_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Retorques_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "RoadTests" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_RoadTests" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "Gear" TEXT NOT NULL,
    "Temperatures" TEXT NOT NULL,
    "Vibration" TEXT NOT NULL,
    "Noises" TEXT NOT NULL,
    "Defects" TEXT NOT NULL,
    "Fix" TEXT NOT NULL,
    "EngineSpeedSi" REAL NULL,
    "EngineSpeedSource" TEXT NULL,
    "EngineSpeedText" TEXT NULL,
    "EngineSpeedUnit" TEXT NULL,
    "OdometerMetres" REAL NULL,
    "OdometerText" TEXT NULL,
    "OdometerUnit" TEXT NULL,
    "SpeedSi" REAL NULL,
    "SpeedSource" TEXT NULL,
    "SpeedText" TEXT NULL,
    "SpeedUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_RoadTests_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_RoadTests_EngineSpeed" CHECK (("EngineSpeedSi" IS NULL) + ("EngineSpeedUnit" IS NULL) + ("EngineSpeedText" IS NULL) + ("EngineSpeedSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_RoadTests_EngineSpeedSi" CHECK ("EngineSpeedSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_RoadTests_EngineSpeedSource" CHECK ("EngineSpeedSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_RoadTests_Odometer" CHECK (("OdometerMetres" IS NULL) + ("OdometerUnit" IS NULL) + ("OdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_RoadTests_OdometerMetres" CHECK ("OdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_RoadTests_Speed" CHECK (("SpeedSi" IS NULL) + ("SpeedUnit" IS NULL) + ("SpeedText" IS NULL) + ("SpeedSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_RoadTests_SpeedSi" CHECK ("SpeedSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_RoadTests_SpeedSource" CHECK ("SpeedSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_RoadTests_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO RoadTests VALUES(1,1,'2024-10-19','4','','','none from the axle; the engine drowns it','far too busy: this is no 3.90','',58.333333333333335702,'OwnersWord','3500 rpm','rev/min',NULL,NULL,NULL,27.777777777777778566,'Measured','100 km/h','km/h','01A22102-140B-78E0-B006-1042F5FE17AD',0);
INSERT INTO RoadTests VALUES(2,3,'2024-08-03','5','','','quiet; a tick from the speedometer cable','','',48.333333333333335702,'Measured','2900 rpm','rev/min',NULL,NULL,NULL,31.292799999999999726,'Measured','70 mph','mph','01A22102-1822-70DA-A302-BDB807870A90',0);
CREATE TABLE IF NOT EXISTS "Suppliers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Suppliers" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Contact" TEXT NOT NULL,
    "GoodFor" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Suppliers_Name" CHECK (length(trim("Name")) > 0)
) STRICT;
INSERT INTO Suppliers VALUES(1,'Tolland yard','row 6, ask for Bartle; closed on Mondays','axles, gearboxes','','01A22102-09B4-7ECC-BD4E-2368A88E2FE0',0);
INSERT INTO Suppliers VALUES(2,'Ambery Balancing','two weeks, cash','propshafts, balancing','','01A22102-09C2-7A4E-A577-E0215F39177E',0);
CREATE TABLE IF NOT EXISTS "Traits" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Traits" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NOT NULL,
    "Trait" TEXT NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_Traits_ParkingBrake" CHECK ("Trait" <> 'ParkingBrake' OR "Text" IN ('Fitted', 'Absent')),
    CONSTRAINT "CK_Traits_Plate" CHECK ("Trait" <> 'Plate' OR "Text" IN ('Flywheel', 'Flexplate')),
    CONSTRAINT "CK_Traits_ShiftLinkage" CHECK ("Trait" <> 'ShiftLinkage' OR "Text" IN ('Fitted', 'Absent')),
    CONSTRAINT "CK_Traits_SpeedometerFeed" CHECK ("Trait" <> 'SpeedometerFeed' OR "Text" IN ('None', 'Cable', 'Pulses')),
    CONSTRAINT "CK_Traits_Starter" CHECK ("Trait" <> 'Starter' OR "Text" IN ('Left', 'Right')),
    CONSTRAINT "CK_Traits_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "CK_Traits_Trait" CHECK ("Trait" IN ('BellHousing', 'Plate', 'Starter', 'Turns', 'InputSpline', 'DiscSpline', 'Output', 'FrontOutput', 'SpeedometerFeed', 'ParkingBrake', 'ShiftLinkage', 'PinionFlange', 'FrontEnd', 'RearEnd')),
    CONSTRAINT "CK_Traits_Turns" CHECK ("Trait" <> 'Turns' OR "Text" IN ('Clockwise', 'Anticlockwise')),
    CONSTRAINT "FK_Traits_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO Traits VALUES(1,1,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(2,1,'Plate','Flywheel');
INSERT INTO Traits VALUES(3,1,'Starter','Right');
INSERT INTO Traits VALUES(4,1,'Turns','Clockwise');
INSERT INTO Traits VALUES(5,2,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(6,2,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(7,2,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(8,2,'Starter','Right');
INSERT INTO Traits VALUES(9,2,'Turns','Clockwise');
INSERT INTO Traits VALUES(10,2,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(11,3,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(12,4,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(13,7,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(14,7,'Plate','Flywheel');
INSERT INTO Traits VALUES(15,7,'Starter','Right');
INSERT INTO Traits VALUES(16,7,'Turns','Clockwise');
INSERT INTO Traits VALUES(17,8,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(18,8,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(19,8,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(20,8,'Starter','Right');
INSERT INTO Traits VALUES(21,8,'Turns','Clockwise');
INSERT INTO Traits VALUES(22,8,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(23,9,'Output','flange 4 × 76 mm');
INSERT INTO Traits VALUES(24,10,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(25,10,'PinionFlange','flange 4 × 76 mm');
INSERT INTO Traits VALUES(26,11,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(27,11,'PinionFlange','flange 4 × 76 mm');
INSERT INTO Traits VALUES(28,12,'FrontEnd','flange 4 × 76 mm');
INSERT INTO Traits VALUES(29,12,'RearEnd','flange 4 × 76 mm');
INSERT INTO Traits VALUES(30,14,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(31,14,'Plate','Flywheel');
INSERT INTO Traits VALUES(32,14,'Starter','Right');
INSERT INTO Traits VALUES(33,14,'Turns','Clockwise');
INSERT INTO Traits VALUES(34,15,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(35,15,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(36,15,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(37,15,'Starter','Right');
INSERT INTO Traits VALUES(38,15,'Turns','Clockwise');
INSERT INTO Traits VALUES(39,15,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(40,16,'SpeedometerFeed','Cable');
INSERT INTO Traits VALUES(41,16,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(42,16,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(43,16,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(44,16,'Starter','Right');
INSERT INTO Traits VALUES(45,16,'Turns','Clockwise');
INSERT INTO Traits VALUES(46,16,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(47,17,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(48,19,'SpeedometerFeed','Cable');
INSERT INTO Traits VALUES(49,21,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(50,21,'Plate','Flywheel');
INSERT INTO Traits VALUES(51,21,'Starter','Right');
INSERT INTO Traits VALUES(52,21,'Turns','Clockwise');
INSERT INTO Traits VALUES(53,22,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(54,22,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(55,22,'DiscSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(56,22,'Starter','Right');
INSERT INTO Traits VALUES(57,22,'Turns','Clockwise');
INSERT INTO Traits VALUES(58,22,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(59,23,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(60,25,'BellHousing','Corvane industrial');
INSERT INTO Traits VALUES(61,25,'Plate','Flywheel');
INSERT INTO Traits VALUES(62,25,'Starter','Right');
INSERT INTO Traits VALUES(63,25,'Turns','Clockwise');
INSERT INTO Traits VALUES(64,26,'BellHousing','Corvane industrial');
INSERT INTO Traits VALUES(65,26,'InputSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(66,26,'DiscSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(67,26,'Starter','Right');
INSERT INTO Traits VALUES(68,26,'Turns','Clockwise');
INSERT INTO Traits VALUES(69,26,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(70,27,'ParkingBrake','Fitted');
CREATE TABLE IF NOT EXISTS "Workshops" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Workshops" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Address" TEXT NOT NULL,
    "Currency" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Workshops_Currency" CHECK ("Currency" GLOB '[A-Z][A-Z][A-Z]')
) STRICT;
INSERT INTO Workshops VALUES(1,'Thorley''s shed','Mill Lane 4, Ambery','EUR','01A22102-04AD-71B3-A04E-5F33F8C764A1',0);
CREATE TABLE IF NOT EXISTS "Donors" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Donors" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "ChassisNumber" TEXT NOT NULL,
    "SellerId" INTEGER NULL,
    "Fate" TEXT NOT NULL,
    "Place" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "BoughtEarliest" TEXT NULL,
    "BoughtLatest" TEXT NULL,
    "BoughtText" TEXT NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Donors_Bought" CHECK (("BoughtText" IS NOT NULL OR ("BoughtEarliest" IS NULL AND "BoughtLatest" IS NULL)) AND ("BoughtEarliest" IS NULL OR "BoughtLatest" IS NULL OR "BoughtEarliest" <= "BoughtLatest")),
    CONSTRAINT "CK_Donors_BoughtEarliest" CHECK ("BoughtEarliest" IS date("BoughtEarliest")),
    CONSTRAINT "CK_Donors_BoughtLatest" CHECK ("BoughtLatest" IS date("BoughtLatest")),
    CONSTRAINT "CK_Donors_Fate" CHECK ("Fate" IN ('Undecided', 'Keep', 'Sell', 'Scrap', 'Gone')),
    CONSTRAINT "CK_Donors_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Donors_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Donors_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Donors_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "FK_Donors_Suppliers_SellerId" FOREIGN KEY ("SellerId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Donors VALUES(1,'Wexcombe delivery van','WX-DV-11853',1,'Sell','behind the shed','','2024-03-01','2024-05-31','spring 2024','EUR',64000,'01A22102-09D4-7889-964D-56E2DF6B97D8',0);
CREATE TABLE IF NOT EXISTS "Jobs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Jobs" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Title" TEXT NOT NULL,
    "Description" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Due" TEXT NULL,
    "BeforeHandover" INTEGER NOT NULL,
    "BlockedBy" TEXT NOT NULL,
    "WaitsForId" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Jobs_Due" CHECK ("Due" IS date("Due")),
    CONSTRAINT "CK_Jobs_State" CHECK ("State" IN ('ToDo', 'UnderWay', 'Done', 'Dropped')),
    CONSTRAINT "CK_Jobs_Title" CHECK (length(trim("Title")) > 0),
    CONSTRAINT "FK_Jobs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Jobs_WantedParts_WaitsForId" FOREIGN KEY ("WaitsForId") REFERENCES "WantedParts" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Jobs VALUES(1,1,'fit the longer axle','','ToDo','2025-04-01',1,'',1,'01A22102-14BE-7C60-9630-5E485F8DF09C',0);
INSERT INTO Jobs VALUES(2,1,'rear brake lines','','UnderWay',NULL,1,'',NULL,'01A22102-14CE-7C02-A81D-AB1AF09CF9F3',0);
INSERT INTO Jobs VALUES(3,3,'five-speed instead of the four-speed','','Done',NULL,0,'',NULL,'01A22102-17DE-70E0-A6AC-9E894D36AB6C',0);
INSERT INTO Jobs VALUES(4,5,'front propshaft','','UnderWay',NULL,0,'',NULL,'01A22102-1A1E-79FB-A1D9-3BC5DF99BBE7',0);
CREATE TABLE IF NOT EXISTS "Offers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Offers" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Place" TEXT NOT NULL,
    "SupplierId" INTEGER NULL,
    "Claimed" TEXT NOT NULL,
    "Contact" TEXT NOT NULL,
    "Seen" TEXT NOT NULL,
    "Expires" TEXT NULL,
    "Notes" TEXT NOT NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Offers_Expires" CHECK ("Expires" IS date("Expires")),
    CONSTRAINT "CK_Offers_Forward" CHECK ("Expires" >= "Seen"),
    CONSTRAINT "CK_Offers_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Offers_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Offers_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Offers_Seen" CHECK ("Seen" IS date("Seen")),
    CONSTRAINT "CK_Offers_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Offers_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Offers_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Offers VALUES(1,1,'axle from a late pickup, cover off','advert, Ambery board',NULL,'3.36','evenings','2024-11-09',NULL,'37 teeth painted on the cover; 1070 between the perches, he says','EUR',28000,'01A22102-142F-70C4-A78A-F9DA6A561CD5',0);
INSERT INTO Offers VALUES(2,1,'axle, row 2, no vehicle with it','Tolland yard',1,'4.10','','2024-11-02',NULL,'','EUR',12000,'01A22102-14B6-7B62-81F4-7F09FE8932F0',0);
CREATE TABLE IF NOT EXISTS "WantedMustHaves" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedMustHaves" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_WantedMustHaves_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_WantedMustHaves_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "CK_WantedMustHaves_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_WantedMustHaves_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id")
) STRICT;
CREATE TABLE IF NOT EXISTS "WantedWindows" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedWindows" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Quantity" TEXT NOT NULL,
    "Low" TEXT NOT NULL,
    "High" TEXT NOT NULL,
    "LowSi" REAL NULL,
    "HighSi" REAL NULL,
    CONSTRAINT "CK_WantedWindows_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_WantedWindows_Quantity" CHECK ("Quantity" IN ('AxleRatio', 'TopGearRatio', 'OverdriveRatio', 'LowRangeRatio', 'Circumference', 'TyreDiameter', 'Width', 'Length')),
    CONSTRAINT "CK_WantedWindows_Sides" CHECK (("LowSi" IS NOT NULL OR "HighSi" IS NOT NULL) AND ("LowSi" IS NULL OR "HighSi" IS NULL OR "LowSi" <= "HighSi")),
    CONSTRAINT "FK_WantedWindows_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id")
) STRICT;
INSERT INTO WantedWindows VALUES(1,1,1,'AxleRatio','3.23','3.49',3.2299999999999999822,3.4900000000000002131);
CREATE TABLE IF NOT EXISTS "DonorPieces" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_DonorPieces" PRIMARY KEY AUTOINCREMENT,
    "DonorId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "ComponentId" INTEGER NULL,
    "DayEarliest" TEXT NULL,
    "DayLatest" TEXT NULL,
    "DayText" TEXT NULL,
    "IncomeCurrency" TEXT NULL,
    "IncomeMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_DonorPieces_Day" CHECK (("DayText" IS NOT NULL OR ("DayEarliest" IS NULL AND "DayLatest" IS NULL)) AND ("DayEarliest" IS NULL OR "DayLatest" IS NULL OR "DayEarliest" <= "DayLatest")),
    CONSTRAINT "CK_DonorPieces_DayEarliest" CHECK ("DayEarliest" IS date("DayEarliest")),
    CONSTRAINT "CK_DonorPieces_DayLatest" CHECK ("DayLatest" IS date("DayLatest")),
    CONSTRAINT "CK_DonorPieces_Income" CHECK (("IncomeMinor" IS NULL) + ("IncomeCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_DonorPieces_IncomeCurrency" CHECK ("IncomeCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_DonorPieces_IncomeMinor" CHECK ("IncomeMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_DonorPieces_State" CHECK ("State" IN ('Remains', 'Taken', 'Sold', 'Scrapped')),
    CONSTRAINT "CK_DonorPieces_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_DonorPieces_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_DonorPieces_Donors_DonorId" FOREIGN KEY ("DonorId") REFERENCES "Donors" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO DonorPieces VALUES(1,1,'engine with gearbox','Taken',NULL,'2024-03-09','2024-03-09','9 March 2024',NULL,NULL,'01A22102-0A1A-7E3B-910B-F789B727CE2F',0);
INSERT INTO DonorPieces VALUES(2,1,'front seats','Sold',NULL,NULL,NULL,NULL,'EUR',9000,'01A22102-0B52-778A-AF88-0D5734AAAEEA',0);
INSERT INTO DonorPieces VALUES(3,1,'rear axle, bent','Remains',NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0B66-7EA9-8D4E-2F4161976DE6',0);
CREATE TABLE IF NOT EXISTS "Costs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Costs" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "JobId" INTEGER NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "SupplierId" INTEGER NULL,
    "ComponentId" INTEGER NULL,
    "ReceiptId" INTEGER NULL,
    "AmountCurrency" TEXT NULL,
    "AmountMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Costs_Amount" CHECK (("AmountMinor" IS NULL) + ("AmountCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Costs_AmountCurrency" CHECK ("AmountCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Costs_AmountMinor" CHECK ("AmountMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Costs_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Costs_Spent" CHECK ("AmountMinor" IS NOT NULL),
    CONSTRAINT "CK_Costs_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Costs_Attachments_ReceiptId" FOREIGN KEY ("ReceiptId") REFERENCES "Attachments" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Costs VALUES(1,1,2,'2024-11-15','brake line and unions',NULL,NULL,NULL,'EUR',4860,'01A22102-1526-79A5-B32D-4697ED69711E',0);
INSERT INTO Costs VALUES(2,1,NULL,'2024-10-12','yard axle',1,NULL,NULL,'EUR',15000,'01A22102-1532-73D5-90CB-5B4FDF31E19F',0);
INSERT INTO Costs VALUES(3,3,3,'2024-07-06','five-speed gearbox',NULL,16,1,'EUR',31000,'01A22102-1816-727B-811D-84726339A36F',0);
INSERT INTO Costs VALUES(4,3,3,'2024-07-19','input seal, oil',NULL,NULL,NULL,'EUR',4150,'01A22102-181E-7348-8382-809306761C86',0);
CREATE TABLE IF NOT EXISTS "OutsideWorks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_OutsideWorks" PRIMARY KEY AUTOINCREMENT,
    "JobId" INTEGER NOT NULL,
    "SupplierId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Sent" TEXT NOT NULL,
    "Promised" TEXT NULL,
    "Back" TEXT NULL,
    "Certificate" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_OutsideWorks_Back" CHECK ("Back" IS date("Back")),
    CONSTRAINT "CK_OutsideWorks_Forward" CHECK (("Promised" IS NULL OR "Promised" >= "Sent") AND ("Back" IS NULL OR "Back" >= "Sent")),
    CONSTRAINT "CK_OutsideWorks_Promised" CHECK ("Promised" IS date("Promised")),
    CONSTRAINT "CK_OutsideWorks_Sent" CHECK ("Sent" IS date("Sent")),
    CONSTRAINT "CK_OutsideWorks_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_OutsideWorks_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_OutsideWorks_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO OutsideWorks VALUES(1,4,2,'new joints and balancing','2024-10-07',NULL,NULL,'','01A22102-1A4A-7A80-9FED-37466A24EDC8',0);
CREATE TABLE IF NOT EXISTS "WorkEntries" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WorkEntries" PRIMARY KEY AUTOINCREMENT,
    "JobId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "Hours" TEXT NOT NULL,
    "Minutes" INTEGER NOT NULL,
    "Who" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_WorkEntries_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_WorkEntries_Hours" CHECK (length(trim("Hours")) > 0),
    CONSTRAINT "CK_WorkEntries_Minutes" CHECK ("Minutes" BETWEEN 1 AND 1440),
    CONSTRAINT "FK_WorkEntries_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO WorkEntries VALUES(1,2,'2024-11-16','3 h 30 min',210,'Agnes','old lines off, new ones bent','01A22102-14D2-7011-93E0-CB243C019505',0);
INSERT INTO WorkEntries VALUES(2,3,'2024-07-20','2 h 30 min',150,'Piet Arlow','on the bench: top gear counted, new input seal','01A22102-17E2-76C7-A9FD-C99903F9ED47',0);
INSERT INTO WorkEntries VALUES(3,3,'2024-07-27','7 h',420,'','four-speed out, five-speed in, tunnel plate cut back','01A22102-17E6-7EB2-B77C-880095588566',0);
CREATE TABLE IF NOT EXISTS "Goals" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Goals" PRIMARY KEY AUTOINCREMENT,
    "EngineSpeed" TEXT NULL,
    "EngineSpeedSi" REAL NULL,
    "Gear" TEXT NULL,
    "Gradient" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "Limit" TEXT NULL,
    "Limited" TEXT NULL,
    "MostCurrency" TEXT NULL,
    "MostMinor" INTEGER NULL,
    "Speed" TEXT NULL,
    "SpeedSi" REAL NULL,
    "Tolerance" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Goals_budget" CHECK ("Kind" <> 'budget' OR ("MostMinor" IS NOT NULL)),
    CONSTRAINT "CK_Goals_cruise" CHECK ("Kind" <> 'cruise' OR ("Speed" IS NOT NULL AND "EngineSpeed" IS NOT NULL AND "Tolerance" IS NOT NULL AND "Gear" IS NOT NULL AND "SpeedSi" IS NOT NULL AND "EngineSpeedSi" IS NOT NULL)),
    CONSTRAINT "CK_Goals_EngineSpeedSi" CHECK ("EngineSpeedSi" > 0 AND "EngineSpeedSi" < 1000),
    CONSTRAINT "CK_Goals_hill" CHECK ("Kind" <> 'hill' OR ("Gradient" IS NOT NULL AND "Speed" IS NOT NULL AND "Gear" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Kind" CHECK ("Kind" IN ('cruise', 'hill', 'limit', 'budget')),
    CONSTRAINT "CK_Goals_limit" CHECK ("Kind" <> 'limit' OR ("Limited" IS NOT NULL AND "Limit" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Limited" CHECK ("Limited" IN ('HillStart', 'TopSpeed', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')),
    CONSTRAINT "CK_Goals_Most" CHECK (("MostMinor" IS NULL) + ("MostCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Goals_MostCurrency" CHECK ("MostCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Goals_MostMinor" CHECK ("MostMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Goals_SpeedSi" CHECK ("SpeedSi" > 0 AND "SpeedSi" < 1000),
    CONSTRAINT "FK_Goals_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Goals VALUES(1,'2500 rpm',41.666666666666664297,'',NULL,'cruise',NULL,NULL,NULL,NULL,'100 km/h',27.777777777777778566,'100 rpm','01A22102-0B9E-7F94-963B-BC3EE633328C',1,0);
INSERT INTO Goals VALUES(2,'2550 rpm',42.5,'',NULL,'cruise',NULL,NULL,NULL,NULL,'60 mph',26.822399999999998244,'','01A22102-154E-7E57-88E3-77B2A68576B1',2,0);
INSERT INTO Goals VALUES(3,'2900 rpm',48.333333333333335702,'',NULL,'cruise',NULL,NULL,NULL,NULL,'70 mph',31.292799999999999726,'','01A22102-16CE-726F-BC80-1953CFFF0BE3',3,0);
INSERT INTO Goals VALUES(4,'3000 rpm',50.0,'',NULL,'cruise',NULL,NULL,NULL,NULL,'100 km/h',27.777777777777778566,'150 rpm','01A22102-1862-7E25-9D4A-2B01EA8B946B',4,0);
INSERT INTO Goals VALUES(5,'2700 rpm',45.0,'',NULL,'cruise',NULL,NULL,NULL,NULL,'90 km/h',25.0,'at most','01A22102-1906-7770-8CF8-4A27281167F6',5,0);
INSERT INTO Goals VALUES(6,'2600 rpm',43.333333333333335702,'',NULL,'cruise',NULL,NULL,NULL,NULL,'95 km/h',26.388888888888889284,'','01A22102-1A5A-766D-A982-5039EA997003',6,0);
CREATE TABLE IF NOT EXISTS "ChangeSets" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_ChangeSets" PRIMARY KEY AUTOINCREMENT,
    "Label" TEXT NOT NULL,
    "Machine" TEXT NOT NULL,
    "Step" TEXT NOT NULL,
    "UndoesId" INTEGER NULL,
    "At" TEXT NOT NULL,
    CONSTRAINT "CK_ChangeSets_At" CHECK (length(trim("At")) > 0),
    CONSTRAINT "CK_ChangeSets_Label" CHECK (length(trim("Label")) > 0),
    CONSTRAINT "CK_ChangeSets_Step" CHECK ("Step" IN ('Forward', 'Undo', 'Redo')),
    CONSTRAINT "CK_ChangeSets_Undoes" CHECK (("Step" = 'Forward') = ("UndoesId" IS NULL) AND ("UndoesId" IS NULL OR "UndoesId" < "Id")),
    CONSTRAINT "FK_ChangeSets_ChangeSets_UndoesId" FOREIGN KEY ("UndoesId") REFERENCES "ChangeSets" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO ChangeSets VALUES(1,'added shop Thorley''s shed','vm','Forward',NULL,'2026-11-28T07:15:11.3569361Z');
INSERT INTO ChangeSets VALUES(2,'added supplier Tolland yard','vm','Forward',NULL,'2026-11-28T07:15:11.4134879Z');
INSERT INTO ChangeSets VALUES(3,'added supplier Ambery Balancing','vm','Forward',NULL,'2026-11-28T07:15:11.4269995Z');
INSERT INTO ChangeSets VALUES(4,'added note','vm','Forward',NULL,'2026-11-28T07:15:11.4435192Z');
INSERT INTO ChangeSets VALUES(5,'added donor Wexcombe delivery van','vm','Forward',NULL,'2026-11-28T07:15:11.5000333Z');
INSERT INTO ChangeSets VALUES(6,'added piece of a donor engine with gearbox','vm','Forward',NULL,'2026-11-28T07:15:11.8233847Z');
INSERT INTO ChangeSets VALUES(7,'added piece of a donor front seats','vm','Forward',NULL,'2026-11-28T07:15:11.8369674Z');
INSERT INTO ChangeSets VALUES(8,'added piece of a donor rear axle, bent','vm','Forward',NULL,'2026-11-28T07:15:11.8473769Z');
INSERT INTO ChangeSets VALUES(9,'added vehicle Brindle','vm','Forward',NULL,'2026-11-28T07:15:11.8885665Z');
INSERT INTO ChangeSets VALUES(10,'added cruise goal 100 km/h at 2500 rpm of Brindle','vm','Forward',NULL,'2026-11-28T07:15:11.9071104Z');
INSERT INTO ChangeSets VALUES(11,'added engine Corvane 3.3 six','vm','Forward',NULL,'2026-11-28T07:15:11.9318968Z');
INSERT INTO ChangeSets VALUES(12,'added gearbox Delmere D4 four-speed','vm','Forward',NULL,'2026-11-28T07:15:11.9562317Z');
INSERT INTO ChangeSets VALUES(13,'added axle Harrow axle, the frame''s own','vm','Forward',NULL,'2026-11-28T07:15:11.9742731Z');
INSERT INTO ChangeSets VALUES(14,'added axle Harrow yard axle','vm','Forward',NULL,'2026-11-28T07:15:11.9791561Z');
INSERT INTO ChangeSets VALUES(15,'added wheel-and-tyre set Stavely 205/75R15 on steel','vm','Forward',NULL,'2026-11-28T07:15:11.9946955Z');
INSERT INTO ChangeSets VALUES(16,'added wheel-and-tyre set Stavely 235/75R15 on steel','vm','Forward',NULL,'2026-11-28T07:15:11.9993033Z');
INSERT INTO ChangeSets VALUES(17,'fitted Corvane 3.3 six to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.5328315Z');
INSERT INTO ChangeSets VALUES(18,'fitted Delmere D4 four-speed to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.6654695Z');
INSERT INTO ChangeSets VALUES(19,'fitted Harrow axle, the frame''s own to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.7697027Z');
INSERT INTO ChangeSets VALUES(20,'fitted Stavely 205/75R15 on steel to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.8868018Z');
INSERT INTO ChangeSets VALUES(21,'fitted Stavely 235/75R15 on steel to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.9245725Z');
INSERT INTO ChangeSets VALUES(22,'added roll-out of 1 June 2024 of Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.9758394Z');
INSERT INTO ChangeSets VALUES(23,'fitted Harrow yard axle to Brindle','vm','Forward',NULL,'2026-11-28T07:15:13.9978731Z');
INSERT INTO ChangeSets VALUES(24,'added turn count of 26 October 2024 of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.0455392Z');
INSERT INTO ChangeSets VALUES(25,'added road test of 19 October 2024 of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.0609304Z');
INSERT INTO ChangeSets VALUES(26,'added wanted part longer axle of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.0855159Z');
INSERT INTO ChangeSets VALUES(27,'added offer axle from a late pickup, cover off of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.2215254Z');
INSERT INTO ChangeSets VALUES(28,'added offer axle, row 2, no vehicle with it of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.2325186Z');
INSERT INTO ChangeSets VALUES(29,'added job fit the longer axle of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.2447323Z');
INSERT INTO ChangeSets VALUES(30,'added job rear brake lines of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.2551120Z');
INSERT INTO ChangeSets VALUES(31,'added work of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.3383670Z');
INSERT INTO ChangeSets VALUES(32,'added cost of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.3457190Z');
INSERT INTO ChangeSets VALUES(33,'added cost of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.3551339Z');
INSERT INTO ChangeSets VALUES(34,'added deadline test station, first look of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.3593578Z');
INSERT INTO ChangeSets VALUES(35,'added decision axle between 3.23 and 3.49 instead of still taller tyres of Brindle','vm','Forward',NULL,'2026-11-28T07:15:14.3632090Z');
INSERT INTO ChangeSets VALUES(36,'added note','vm','Forward',NULL,'2026-11-28T07:15:14.3669727Z');
INSERT INTO ChangeSets VALUES(37,'added vehicle Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.3725759Z');
INSERT INTO ChangeSets VALUES(38,'added cruise goal 60 mph at 2550 rpm of Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.3829684Z');
INSERT INTO ChangeSets VALUES(39,'added engine Corvane 2.1 four','vm','Forward',NULL,'2026-11-28T07:15:14.3875728Z');
INSERT INTO ChangeSets VALUES(40,'added gearbox Delmere D4 light','vm','Forward',NULL,'2026-11-28T07:15:14.3914633Z');
INSERT INTO ChangeSets VALUES(41,'added overdrive Delmere step-up unit','vm','Forward',NULL,'2026-11-28T07:15:14.3994616Z');
INSERT INTO ChangeSets VALUES(42,'added axle Harrow light axle, short','vm','Forward',NULL,'2026-11-28T07:15:14.4028500Z');
INSERT INTO ChangeSets VALUES(43,'added axle Harrow light axle, long','vm','Forward',NULL,'2026-11-28T07:15:14.4066947Z');
INSERT INTO ChangeSets VALUES(44,'added propshaft Ottery''s own propshaft','vm','Forward',NULL,'2026-11-28T07:15:14.4328150Z');
INSERT INTO ChangeSets VALUES(45,'added wheel-and-tyre set Tarn 165/80-15 on wires','vm','Forward',NULL,'2026-11-28T07:15:14.4433734Z');
INSERT INTO ChangeSets VALUES(46,'fitted Corvane 2.1 four to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.4552119Z');
INSERT INTO ChangeSets VALUES(47,'fitted Delmere D4 light to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.4826604Z');
INSERT INTO ChangeSets VALUES(48,'fitted Ottery''s own propshaft to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6086522Z');
INSERT INTO ChangeSets VALUES(49,'fitted Harrow light axle, short to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6270484Z');
INSERT INTO ChangeSets VALUES(50,'fitted Tarn 165/80-15 on wires to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6468689Z');
INSERT INTO ChangeSets VALUES(51,'added roll-out of 6 April 2024','vm','Forward',NULL,'2026-11-28T07:15:14.6557009Z');
INSERT INTO ChangeSets VALUES(52,'fitted Harrow light axle, long to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6760932Z');
INSERT INTO ChangeSets VALUES(53,'added turn count of 16 June 2024 of Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6841233Z');
INSERT INTO ChangeSets VALUES(54,'added roll-out of 16 June 2024 of Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.6909473Z');
INSERT INTO ChangeSets VALUES(55,'fitted Delmere step-up unit to Ottery','vm','Forward',NULL,'2026-11-28T07:15:14.7514405Z');
INSERT INTO ChangeSets VALUES(56,'added vehicle Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.7580571Z');
INSERT INTO ChangeSets VALUES(57,'added cruise goal 70 mph at 2900 rpm of Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.7667929Z');
INSERT INTO ChangeSets VALUES(58,'added engine Corvane 2.3 four','vm','Forward',NULL,'2026-11-28T07:15:14.7933676Z');
INSERT INTO ChangeSets VALUES(59,'added gearbox Delmere D4, Tansy''s own','vm','Forward',NULL,'2026-11-28T07:15:14.8014650Z');
INSERT INTO ChangeSets VALUES(60,'added gearbox Delmere D5 five-speed','vm','Forward',NULL,'2026-11-28T07:15:14.8118293Z');
INSERT INTO ChangeSets VALUES(61,'added axle Harrow axle 41/11','vm','Forward',NULL,'2026-11-28T07:15:14.8147051Z');
INSERT INTO ChangeSets VALUES(62,'added wheel-and-tyre set Norwell 185/60R15 on alloys','vm','Forward',NULL,'2026-11-28T07:15:14.8229077Z');
INSERT INTO ChangeSets VALUES(63,'added speedometer Tansy''s own speedometer','vm','Forward',NULL,'2026-11-28T07:15:14.8300278Z');
INSERT INTO ChangeSets VALUES(64,'added wheel-and-tyre set Norwell 195/65R15 on alloys','vm','Forward',NULL,'2026-11-28T07:15:14.8392554Z');
INSERT INTO ChangeSets VALUES(65,'fitted Corvane 2.3 four to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.8517260Z');
INSERT INTO ChangeSets VALUES(66,'fitted Delmere D4, Tansy''s own to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.8725903Z');
INSERT INTO ChangeSets VALUES(67,'fitted Harrow axle 41/11 to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.8857902Z');
INSERT INTO ChangeSets VALUES(68,'fitted Norwell 185/60R15 on alloys to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.9058144Z');
INSERT INTO ChangeSets VALUES(69,'fitted Tansy''s own speedometer to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.9652738Z');
INSERT INTO ChangeSets VALUES(70,'fitted Norwell 195/65R15 on alloys to Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.9887819Z');
INSERT INTO ChangeSets VALUES(71,'added roll-out of 4 May 2024 of Tansy','vm','Forward',NULL,'2026-11-28T07:15:14.9990428Z');
INSERT INTO ChangeSets VALUES(72,'added gear count of 20 July 2024','vm','Forward',NULL,'2026-11-28T07:15:15.0053079Z');
INSERT INTO ChangeSets VALUES(73,'fitted Delmere D5 five-speed to Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.0287259Z');
INSERT INTO ChangeSets VALUES(74,'added job five-speed instead of the four-speed of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.0393618Z');
INSERT INTO ChangeSets VALUES(75,'added work of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.0437689Z');
INSERT INTO ChangeSets VALUES(76,'added work of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.0496177Z');
INSERT INTO ChangeSets VALUES(77,'added attachment receipt-five-speed.jpg','vm','Forward',NULL,'2026-11-28T07:15:15.0784727Z');
INSERT INTO ChangeSets VALUES(78,'added cost of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.0973813Z');
INSERT INTO ChangeSets VALUES(79,'added cost of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.1032699Z');
INSERT INTO ChangeSets VALUES(80,'added road test of 3 August 2024 of Tansy','vm','Forward',NULL,'2026-11-28T07:15:15.1070273Z');
INSERT INTO ChangeSets VALUES(81,'added attachment tansy.jpg','vm','Forward',NULL,'2026-11-28T07:15:15.1231324Z');
INSERT INTO ChangeSets VALUES(82,'added attachment tansy-on-stands.jpg','vm','Forward',NULL,'2026-11-28T07:15:15.1453001Z');
INSERT INTO ChangeSets VALUES(83,'added vehicle Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.1637547Z');
INSERT INTO ChangeSets VALUES(84,'added cruise goal 100 km/h at 3000 rpm of Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.1706925Z');
INSERT INTO ChangeSets VALUES(85,'added engine Corvane 2.7 six','vm','Forward',NULL,'2026-11-28T07:15:15.1750821Z');
INSERT INTO ChangeSets VALUES(86,'added gearbox Delmere D4 close-ratio','vm','Forward',NULL,'2026-11-28T07:15:15.1791134Z');
INSERT INTO ChangeSets VALUES(87,'added axle Harrow narrow axle','vm','Forward',NULL,'2026-11-28T07:15:15.1826429Z');
INSERT INTO ChangeSets VALUES(88,'added wheel-and-tyre set Norwell 185/70R14 on steel','vm','Forward',NULL,'2026-11-28T07:15:15.1866454Z');
INSERT INTO ChangeSets VALUES(89,'fitted Corvane 2.7 six to Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.1953510Z');
INSERT INTO ChangeSets VALUES(90,'fitted Delmere D4 close-ratio to Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.2048033Z');
INSERT INTO ChangeSets VALUES(91,'fitted Harrow narrow axle to Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.2216395Z');
INSERT INTO ChangeSets VALUES(92,'fitted Norwell 185/70R14 on steel to Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.2958140Z');
INSERT INTO ChangeSets VALUES(93,'added turn count of 9 November 2024 of Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.3082462Z');
INSERT INTO ChangeSets VALUES(94,'added roll-out of 16 November 2024 of Quillon','vm','Forward',NULL,'2026-11-28T07:15:15.3113664Z');
INSERT INTO ChangeSets VALUES(95,'added vehicle Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.3244651Z');
INSERT INTO ChangeSets VALUES(96,'added cruise goal 90 km/h at 2700 rpm of Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.3348945Z');
INSERT INTO ChangeSets VALUES(97,'added engine Corvane 3.9 diesel','vm','Forward',NULL,'2026-11-28T07:15:15.3459976Z');
INSERT INTO ChangeSets VALUES(98,'added gearbox Delmere D4 heavy','vm','Forward',NULL,'2026-11-28T07:15:15.3592842Z');
INSERT INTO ChangeSets VALUES(99,'added transfer case Marlow M2 transfer case','vm','Forward',NULL,'2026-11-28T07:15:15.3702851Z');
INSERT INTO ChangeSets VALUES(100,'added axle Harrow heavy rear 4.56','vm','Forward',NULL,'2026-11-28T07:15:15.3789234Z');
INSERT INTO ChangeSets VALUES(101,'added axle Harrow heavy front 4.56','vm','Forward',NULL,'2026-11-28T07:15:15.3866312Z');
INSERT INTO ChangeSets VALUES(102,'added axle Harrow heavy rear 4.10','vm','Forward',NULL,'2026-11-28T07:15:15.3946387Z');
INSERT INTO ChangeSets VALUES(103,'added axle Harrow heavy front 4.10','vm','Forward',NULL,'2026-11-28T07:15:15.3988349Z');
INSERT INTO ChangeSets VALUES(104,'added wheel-and-tyre set Tarn LT235/85R16 on steel','vm','Forward',NULL,'2026-11-28T07:15:15.4026446Z');
INSERT INTO ChangeSets VALUES(105,'fitted Corvane 3.9 diesel to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.4194491Z');
INSERT INTO ChangeSets VALUES(106,'fitted Delmere D4 heavy to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.4329638Z');
INSERT INTO ChangeSets VALUES(107,'fitted Marlow M2 transfer case to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.5156686Z');
INSERT INTO ChangeSets VALUES(108,'fitted Harrow heavy rear 4.56 to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.5301623Z');
INSERT INTO ChangeSets VALUES(109,'fitted Harrow heavy front 4.56 to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.5419848Z');
INSERT INTO ChangeSets VALUES(110,'fitted Tarn LT235/85R16 on steel to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.5624775Z');
INSERT INTO ChangeSets VALUES(111,'added roll-out of 11 May 2024','vm','Forward',NULL,'2026-11-28T07:15:15.5667904Z');
INSERT INTO ChangeSets VALUES(112,'fitted Harrow heavy rear 4.10 to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.5832817Z');
INSERT INTO ChangeSets VALUES(113,'added turn count of 6 October 2024','vm','Forward',NULL,'2026-11-28T07:15:15.5884972Z');
INSERT INTO ChangeSets VALUES(114,'fitted Harrow heavy front 4.10 to Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.6079632Z');
INSERT INTO ChangeSets VALUES(115,'added turn count of 8 October 2024 of Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.6110736Z');
INSERT INTO ChangeSets VALUES(116,'added job front propshaft of Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.6144425Z');
INSERT INTO ChangeSets VALUES(117,'added work given out new joints and balancing of Haldor','vm','Forward',NULL,'2026-11-28T07:15:15.6612800Z');
INSERT INTO ChangeSets VALUES(118,'added vehicle Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.6716535Z');
INSERT INTO ChangeSets VALUES(119,'added cruise goal 95 km/h at 2600 rpm of Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.6745341Z');
INSERT INTO ChangeSets VALUES(120,'added engine Corvane 2.1 four, van''s own','vm','Forward',NULL,'2026-11-28T07:15:15.6788404Z');
INSERT INTO ChangeSets VALUES(121,'added gearbox Delmere D4 column-shift','vm','Forward',NULL,'2026-11-28T07:15:15.6954355Z');
INSERT INTO ChangeSets VALUES(122,'added axle van''s own axle, no tag','vm','Forward',NULL,'2026-11-28T07:15:15.7026644Z');
INSERT INTO ChangeSets VALUES(123,'fitted Corvane 2.1 four, van''s own to Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.7592810Z');
INSERT INTO ChangeSets VALUES(124,'fitted Delmere D4 column-shift to Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.7850906Z');
INSERT INTO ChangeSets VALUES(125,'fitted van''s own axle, no tag to Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.8099973Z');
INSERT INTO ChangeSets VALUES(126,'fitted Stavely 205/75R15 on steel to Pellow','vm','Forward',NULL,'2026-11-28T07:15:15.8532633Z');
CREATE TABLE IF NOT EXISTS "Findables" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Findables" PRIMARY KEY AUTOINCREMENT,
    "RecordUid" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    "ComponentId" INTEGER NULL,
    "Day" TEXT NULL,
    "Title" TEXT NOT NULL,
    "About" TEXT NOT NULL,
    "Body" TEXT NOT NULL,
    CONSTRAINT "CK_Findables_Day" CHECK ("Day" IS date("Day")),
    CONSTRAINT "CK_Findables_Kind" CHECK (length(trim("Kind")) > 0)
) STRICT;
INSERT INTO Findables VALUES(1,'01A22102-04AD-71B3-A04E-5F33F8C764A1','shop',NULL,NULL,NULL,'Thorley''s shed','',replace('Mill Lane 4, Ambery\nEUR\nThorley''s shed','\n',char(10)));
INSERT INTO Findables VALUES(2,'01A22102-09B4-7ECC-BD4E-2368A88E2FE0','supplier',NULL,NULL,NULL,'Tolland yard','',replace('row 6, ask for Bartle; closed on Mondays\naxles, gearboxes\nTolland yard','\n',char(10)));
INSERT INTO Findables VALUES(3,'01A22102-09C2-7A4E-A577-E0215F39177E','supplier',NULL,NULL,NULL,'Ambery Balancing','',replace('two weeks, cash\npropshafts, balancing\nAmbery Balancing','\n',char(10)));
INSERT INTO Findables VALUES(4,'01A22102-09C7-7FC7-82EE-C40FD9A59844','note',NULL,NULL,'2024-10-26','','',replace('Tags there have been moved between housings. Count before paying.\ntags','\n',char(10)));
INSERT INTO Findables VALUES(5,'01A22102-09D4-7889-964D-56E2DF6B97D8','donor',NULL,NULL,NULL,'Wexcombe delivery van','',replace('WX-DV-11853\nWexcombe delivery van\nbehind the shed\nspring 2024','\n',char(10)));
INSERT INTO Findables VALUES(6,'01A22102-0A1A-7E3B-910B-F789B727CE2F','piece of a donor',NULL,NULL,NULL,'engine with gearbox','',replace('engine with gearbox\n9 March 2024','\n',char(10)));
INSERT INTO Findables VALUES(7,'01A22102-0B52-778A-AF88-0D5734AAAEEA','piece of a donor',NULL,NULL,NULL,'front seats','','front seats');
INSERT INTO Findables VALUES(8,'01A22102-0B66-7EA9-8D4E-2F4161976DE6','piece of a donor',NULL,NULL,NULL,'rear axle, bent','','rear axle, bent');
INSERT INTO Findables VALUES(9,'01A22102-0B6B-7A35-9308-04B67DB4AEDB','vehicle',1,NULL,NULL,'Brindle','Brindle',replace('WX-PU-20417\nhalf-ton pick-up of 1971\nBrindle\nHalf-ton pickup, bare frame when it came. Wants to cross the county without shouting.\nAgnes Thorley\nBT 417\n1070 mm','\n',char(10)));
INSERT INTO Findables VALUES(10,'01A22102-0B9E-7F94-963B-BC3EE633328C','cruise goal',1,NULL,NULL,'100 km/h at 2500 rpm','Brindle',replace('2500 rpm\n100 km/h\n100 rpm','\n',char(10)));
INSERT INTO Findables VALUES(11,'01A22102-0BB2-70F7-B338-24769F71E45E','engine',NULL,1,NULL,'Corvane 3.3 six','Corvane 3.3 six',replace('Wexcombe delivery van, Tolland yard\nCorvane 3.3 six\nCV33-118204\n650 rpm\n4600 rpm\n15.05 mm\nCorvane six\nFlywheel\nRight\nClockwise','\n',char(10)));
INSERT INTO Findables VALUES(12,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2','gearbox',NULL,2,NULL,'Delmere D4 four-speed','Delmere D4 four-speed',replace('came with the engine\nDelmere D4 four-speed\nD4-60921\n15.00 mm\nCorvane six\n26 × 1 in\nRight\nClockwise\nFitted\n1\n3.54\n2\n2.12\n3\n1.38\n4\n1.00','\n',char(10)));
INSERT INTO Findables VALUES(13,'01A22102-0BE2-7FBE-B5C2-9A2225594B2E','axle',NULL,3,NULL,'Harrow axle, the frame''s own','Harrow axle, the frame''s own',replace('came with the frame\nHarrow axle, the frame''s own\nPinion chipped on two teeth; whines from 70 km/h.\nHR-3-0077\nunder the bench, left\n1070 mm\nFitted','\n',char(10)));
INSERT INTO Findables VALUES(14,'01A22102-0BEA-7177-9ECF-82D4BBD9947E','axle',NULL,4,NULL,'Harrow yard axle','Harrow yard axle',replace('Tolland yard, row 6, no vehicle with it\nHarrow yard axle\nCover and tag look newer than the housing.\nHR-7-4410\n3.90\n1071 mm\nFitted','\n',char(10)));
INSERT INTO Findables VALUES(15,'01A22102-0BF2-7265-9ACB-746AB5C1F49D','wheel-and-tyre set',NULL,5,NULL,'Stavely 205/75R15 on steel','Stavely 205/75R15 on steel',replace('came with the frame\nStavely 205/75R15 on steel\n205/75R15','\n',char(10)));
INSERT INTO Findables VALUES(16,'01A22102-0BFD-7275-81FA-15F8DA3D1E3E','wheel-and-tyre set',NULL,6,NULL,'Stavely 235/75R15 on steel','Stavely 235/75R15 on steel',replace('bought new\nStavely 235/75R15 on steel\n235/75R15 105S','\n',char(10)));
INSERT INTO Findables VALUES(17,'01A22102-10D1-78FE-B9C2-434A7605E22A','fitment',1,1,'2024-03-09','as engine from 9 March 2024','Brindle Corvane 3.3 six',replace('the frame came without one\n61 204 km','\n',char(10)));
INSERT INTO Findables VALUES(18,'01A22102-1269-76FD-B2BE-ECBDFA255AD1','fitment',1,2,'2024-03-09','as gearbox from 9 March 2024','Brindle Delmere D4 four-speed',replace('bolted up with the engine\n61 204 km','\n',char(10)));
INSERT INTO Findables VALUES(19,'01A22102-12C9-7F39-AA05-784F36728AFE','fitment',1,3,'2024-03-16','as axle from 16 March 2024 to 12 October 2024','Brindle Harrow axle, the frame''s own',replace('back under the frame after cleaning\nown axle whines, pinion chipped; tag of this one says 3.90\n61 204\n64 105','\n',char(10)));
INSERT INTO Findables VALUES(20,'01A22102-133D-7B53-BE39-F41A2220281E','fitment',1,5,'2024-03-16','as tyres from 16 March 2024 to 25 May 2024','Brindle Stavely 205/75R15 on steel',replace('to roll the frame about\ntaller tyres, to calm the engine on the road\n61 204\n61 690','\n',char(10)));
INSERT INTO Findables VALUES(22,'01A22102-1371-7514-82A3-3DF750334AA7','fitment',1,6,'2024-05-25','as tyres from 25 May 2024','Brindle Stavely 235/75R15 on steel',replace('taller tyres, to calm the engine on the road\n61 690','\n',char(10)));
INSERT INTO Findables VALUES(23,'01A22102-138A-7396-A86B-36C493B866D9','roll-out',1,6,'2024-06-01','of 1 June 2024','Brindle Stavely 235/75R15 on steel',replace('shed floor, level, driver aboard\nPiet Arlow\n0.01\n2.4 bar\n2 mm\n1:2238mm\n3:6 715 mm\n5:11.19 m','\n',char(10)));
INSERT INTO Findables VALUES(25,'01A22102-13C4-7218-967C-42DF02395960','fitment',1,4,'2024-10-12','as axle from 12 October 2024','Brindle Harrow yard axle',replace('own axle whines, pinion chipped; tag of this one says 3.90\n64 105','\n',char(10)));
INSERT INTO Findables VALUES(26,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3','turn count',1,4,'2024-10-26','of 26 October 2024','Brindle Harrow yard axle',replace('on stands, left wheel held, chalk on the flange\nPiet Arlow\nDone because the engine was far too busy on the first drive.\n0.02\n0.25\n10:23.7\n10:23 3/4','\n',char(10)));
INSERT INTO Findables VALUES(27,'01A22102-140B-78E0-B006-1042F5FE17AD','road test',1,NULL,'2024-10-19','of 19 October 2024','Brindle',replace('far too busy: this is no 3.90\n4\nnone from the axle; the engine drowns it\n3500 rpm\n100 km/h','\n',char(10)));
INSERT INTO Findables VALUES(28,'01A22102-1416-7AF3-8ECE-F4221AF85D58','wanted part',1,NULL,NULL,'longer axle','Brindle',replace('longer axle\n3.49\n3.23','\n',char(10)));
INSERT INTO Findables VALUES(29,'01A22102-142F-70C4-A78A-F9DA6A561CD5','offer',1,NULL,NULL,'axle from a late pickup, cover off','Brindle',replace('3.36\nevenings\n37 teeth painted on the cover; 1070 between the perches, he says\nadvert, Ambery board\naxle from a late pickup, cover off','\n',char(10)));
INSERT INTO Findables VALUES(30,'01A22102-14B6-7B62-81F4-7F09FE8932F0','offer',1,NULL,NULL,'axle, row 2, no vehicle with it','Brindle',replace('4.10\nTolland yard\naxle, row 2, no vehicle with it','\n',char(10)));
INSERT INTO Findables VALUES(31,'01A22102-14BE-7C60-9630-5E485F8DF09C','job',1,NULL,NULL,'fit the longer axle','Brindle','fit the longer axle');
INSERT INTO Findables VALUES(32,'01A22102-14CE-7C02-A81D-AB1AF09CF9F3','job',1,NULL,NULL,'rear brake lines','Brindle','rear brake lines');
INSERT INTO Findables VALUES(33,'01A22102-14D2-7011-93E0-CB243C019505','work',1,NULL,'2024-11-16','','Brindle',replace('3 h 30 min\nold lines off, new ones bent\nAgnes','\n',char(10)));
INSERT INTO Findables VALUES(34,'01A22102-1526-79A5-B32D-4697ED69711E','cost',1,NULL,'2024-11-15','','Brindle','brake line and unions');
INSERT INTO Findables VALUES(35,'01A22102-1532-73D5-90CB-5B4FDF31E19F','cost',1,NULL,'2024-10-12','','Brindle','yard axle');
INSERT INTO Findables VALUES(36,'01A22102-1536-7CC4-9033-E031F2C641E4','deadline',1,NULL,NULL,'test station, first look','Brindle','test station, first look');
INSERT INTO Findables VALUES(37,'01A22102-153A-7941-A452-8365EE840EF4','decision',1,NULL,'2024-10-27','axle between 3.23 and 3.49 instead of still taller tyres','Brindle',replace('Agnes Thorley\naxle between 3.23 and 3.49 instead of still taller tyres\ntaller tyres would reach the arches and read the speedometer low','\n',char(10)));
INSERT INTO Findables VALUES(38,'01A22102-153E-7AEE-8BDE-37C076F45EE7','note',NULL,NULL,'2024-10-27','','',replace('Two stands under the frame, not the axle. Ask Piet for a Saturday.\nbefore lifting','\n',char(10)));
INSERT INTO Findables VALUES(39,'01A22102-1543-790D-AA1D-414F81A307F5','vehicle',2,NULL,NULL,'Ottery','Ottery',replace('OT 5529\nopen tourer of 1955\nOttery\nOpen tourer. Handed over with its sheet in September 2024.\nRufus Keel\nKEE 55','\n',char(10)));
INSERT INTO Findables VALUES(40,'01A22102-154E-7E57-88E3-77B2A68576B1','cruise goal',2,NULL,NULL,'60 mph at 2550 rpm','Ottery',replace('2550 rpm\n60 mph','\n',char(10)));
INSERT INTO Findables VALUES(41,'01A22102-1552-7572-AA27-EEF376057F7A','engine',NULL,7,NULL,'Corvane 2.1 four','Corvane 2.1 four',replace('its own\nCorvane 2.1 four\nCV21-7715\n750 rpm\n5200 rpm\n15.05 mm\nCorvane four\nFlywheel\nRight\nClockwise','\n',char(10)));
INSERT INTO Findables VALUES(42,'01A22102-1556-7A89-9F84-863E0DA3C5D8','gearbox',NULL,8,NULL,'Delmere D4 light','Delmere D4 light',replace('its own\nDelmere D4 light\nD4L-1123\n15.00 mm\nCorvane four\n26 × 1 in\nRight\nClockwise\nFitted\n1\n3.41\n2\n2.00\n3\n1.37\n4\n1.00','\n',char(10)));
INSERT INTO Findables VALUES(43,'01A22102-1558-781A-B2B4-7631727D652C','overdrive',NULL,9,NULL,'Delmere step-up unit','Delmere step-up unit',replace('swap meet at Ferrow\nDelmere step-up unit\nSU-338\n0.78\nflange 4 × 76 mm','\n',char(10)));
INSERT INTO Findables VALUES(44,'01A22102-1562-7333-BB56-C95260B8522A','axle',NULL,10,NULL,'Harrow light axle, short','Harrow light axle, short',replace('its own\nHarrow light axle, short\nHR-L-209\nrack B, bottom\n4.3\nFitted\nflange 4 × 76 mm','\n',char(10)));
INSERT INTO Findables VALUES(45,'01A22102-1566-763B-BE49-90AFE659FAB6','axle',NULL,11,NULL,'Harrow light axle, long','Harrow light axle, long',replace('saloon wreck at Ferrow\nHarrow light axle, long\nHR-L-311\n3.90\nFitted\nflange 4 × 76 mm','\n',char(10)));
INSERT INTO Findables VALUES(46,'01A22102-1576-7B85-B121-0C897BDACAAD','propshaft',NULL,12,NULL,'Ottery''s own propshaft','Ottery''s own propshaft',replace('its own\nOttery''s own propshaft\nflange 4 × 76 mm\n1240 mm\n76.2 mm\n2.1 mm','\n',char(10)));
INSERT INTO Findables VALUES(47,'01A22102-158A-7BC0-8DD8-E4EA34A45180','wheel-and-tyre set',NULL,13,NULL,'Tarn 165/80-15 on wires','Tarn 165/80-15 on wires',replace('bought new\nTarn 165/80-15 on wires\n165/80-15','\n',char(10)));
INSERT INTO Findables VALUES(48,'01A22102-1595-783B-9C89-2C4AD450717E','fitment',2,7,'2024-03-02','as engine from 2 March 2024','Ottery Corvane 2.1 four',replace('rebuilt\n38 411','\n',char(10)));
INSERT INTO Findables VALUES(49,'01A22102-15A7-76EB-B8AC-284872BE5DE8','fitment',2,8,'2024-03-02','as gearbox from 2 March 2024','Ottery Delmere D4 light',replace('rebuilt with the engine\n38 411','\n',char(10)));
INSERT INTO Findables VALUES(50,'01A22102-160B-795D-B20F-9E0D69DB8A62','fitment',2,12,'2024-03-16','as propshaft from 16 March 2024','Ottery Ottery''s own propshaft',replace('balanced, new joints\n38 411','\n',char(10)));
INSERT INTO Findables VALUES(51,'01A22102-163C-772F-A0F3-1DE50C0F6509','fitment',2,10,'2024-03-23','as axle from 23 March 2024 to 15 June 2024','Ottery Harrow light axle, short',replace('its own, new seals\ntoo busy at 60; the long one from Ferrow\n38 411\n39 020 mi','\n',char(10)));
INSERT INTO Findables VALUES(52,'01A22102-1654-73ED-9797-23B39C11A748','fitment',2,13,'2024-04-06','as tyres from 6 April 2024','Ottery Tarn 165/80-15 on wires',replace('right size for the arches\n38 412','\n',char(10)));
INSERT INTO Findables VALUES(53,'01A22102-165E-7371-B1FB-8F9823D43AB1','roll-out',NULL,13,'2024-04-06','of 6 April 2024','Tarn 165/80-15 on wires',replace('loose wheel along the bench rail\n0.01\n26 psi\n2 mm\n1:2028mm\n2:4057mm','\n',char(10)));
INSERT INTO Findables VALUES(55,'01A22102-166C-7F32-8377-714B755F4EEF','fitment',2,11,'2024-06-15','as axle from 15 June 2024','Ottery Harrow light axle, long',replace('too busy at 60; the long one from Ferrow\n39 020 mi','\n',char(10)));
INSERT INTO Findables VALUES(56,'01A22102-167A-73F5-981F-292CCD8BDE71','turn count',2,11,'2024-06-16','of 16 June 2024','Ottery Harrow light axle, long',replace('rolled along the yard, both wheels on the ground\nRufus Keel\n0.02\n0.25\n10:39\n20:78','\n',char(10)));
INSERT INTO Findables VALUES(57,'01A22102-1682-75CE-95AA-1C1B06D1C764','roll-out',2,13,'2024-06-16','of 16 June 2024','Ottery Tarn 165/80-15 on wires',replace('same run along the yard\nRufus Keel\n0.01\n26 psi\n2 mm\n2:12 ft 8 in\n4:25 ft 4 in\n6:38 ft','\n',char(10)));
INSERT INTO Findables VALUES(58,'01A22102-16AE-746E-A41D-156507DA0AD9','fitment',2,9,'2024-08-10','as overdrive from 10 August 2024','Ottery Delmere step-up unit',replace('Rufus wants it quiet at 60\n39 544','\n',char(10)));
INSERT INTO Findables VALUES(59,'01A22102-16C3-7BF3-92EE-6A94334BEA5E','vehicle',3,NULL,NULL,'Tansy','Tansy',replace('saloon, 1980–95\nTN-88-3105\nestate of 1988, five doors\nTansy\nEstate, daily use.\nDorrit Ames\nD 3105 A\nmodern radial\n1360 kg ± 10 kg\n830 kg ± 5 kg\n860 kg ± 5 kg','\n',char(10)));
INSERT INTO Findables VALUES(60,'01A22102-16CE-726F-BC80-1953CFFF0BE3','cruise goal',3,NULL,NULL,'70 mph at 2900 rpm','Tansy',replace('2900 rpm\n70 mph','\n',char(10)));
INSERT INTO Findables VALUES(61,'01A22102-16D2-7B00-A31A-68A8696964FA','engine',NULL,14,NULL,'Corvane 2.3 four','Corvane 2.3 four',replace('its own\nCorvane 2.3 four\nCV23-90411\n800 rpm\n5800 rpm\n1200:158 Nm; 2400:182 Nm; 3200:188 Nm; 5400:156 Nm\n15.05 mm\nCorvane four\nFlywheel\nRight\nClockwise','\n',char(10)));
INSERT INTO Findables VALUES(62,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573','gearbox',NULL,15,NULL,'Delmere D4, Tansy''s own','Delmere D4, Tansy''s own',replace('its own\nDelmere D4, Tansy''s own\nJumps out of second.\nD4-33870\nrack A, top\n15.00 mm\nCorvane four\n26 × 1 in\nRight\nClockwise\nFitted\n1\n3.54\n2\n2.12\n3\n1.38\n4\n1.00','\n',char(10)));
INSERT INTO Findables VALUES(63,'01A22102-16FA-720B-B33A-E9CDB978D5EA','gearbox',NULL,16,NULL,'Delmere D5 five-speed','Delmere D5 five-speed',replace('Tolland yard, from a late saloon\nDelmere D5 five-speed\nD5-00214\n260 Nm\n15.00 mm\nCable\nCorvane four\n26 × 1 in\nRight\nClockwise\nFitted\n1\n3.32\n2\n2.05\n3\n1.38\n4\n1.00\n5\n0.81','\n',char(10)));
INSERT INTO Findables VALUES(64,'01A22102-16FE-7D58-A542-9A2E5FC1F535','axle',NULL,17,NULL,'Harrow axle 41/11','Harrow axle 41/11',replace('its own\nHarrow axle 41/11\nHR-5-2218\n3.73\nFitted','\n',char(10)));
INSERT INTO Findables VALUES(65,'01A22102-1706-7407-8A9C-543625C5F0EA','wheel-and-tyre set',NULL,18,NULL,'Norwell 185/60R15 on alloys','Norwell 185/60R15 on alloys',replace('came with it\nNorwell 185/60R15 on alloys\nloft\n185/60R15 84H\n1.84 m','\n',char(10)));
INSERT INTO Findables VALUES(66,'01A22102-170A-7EB1-A70B-5316CDE58D09','speedometer',NULL,19,NULL,'Tansy''s own speedometer','Tansy''s own speedometer',replace('its own\nTansy''s own speedometer\n870\nCable','\n',char(10)));
INSERT INTO Findables VALUES(67,'01A22102-1716-7EB2-964B-058A0A6864FB','wheel-and-tyre set',NULL,20,NULL,'Norwell 195/65R15 on alloys','Norwell 195/65R15 on alloys',replace('bought new\nNorwell 195/65R15 on alloys\n195/65R15 91H\n2 mm','\n',char(10)));
INSERT INTO Findables VALUES(68,'01A22102-171D-78D6-82D2-EFE980D1074D','fitment',3,14,'2024-04-13','as engine from 13 April 2024','Tansy Corvane 2.3 four',replace('back in after a head gasket\n92 118','\n',char(10)));
INSERT INTO Findables VALUES(69,'01A22102-172F-756B-A018-5958799A47A3','fitment',3,15,'2024-04-13','as gearbox from 13 April 2024 to 27 July 2024','Tansy Delmere D4, Tansy''s own',replace('its own, for now\nown box jumps out of second, and 70 mph is tiring\n92 118\n94 870','\n',char(10)));
INSERT INTO Findables VALUES(70,'01A22102-1743-7FE5-BC3D-BE522BBE5F0A','fitment',3,17,'2024-04-13','as axle from 13 April 2024','Tansy Harrow axle 41/11',replace('cover off, teeth counted, new gasket\n92 118','\n',char(10)));
INSERT INTO Findables VALUES(71,'01A22102-1757-7CFD-BDF1-36D7D718CF78','fitment',3,18,'2024-04-13','as tyres from 13 April 2024 to 20 April 2024','Tansy Norwell 185/60R15 on alloys',replace('as it came\nlegal tread\n92 118','\n',char(10)));
INSERT INTO Findables VALUES(72,'01A22102-1783-7B13-A04F-1E35BFF01662','fitment',3,19,'2024-04-13','as speedometer from 13 April 2024','Tansy Tansy''s own speedometer',replace('its own\n92 118','\n',char(10)));
INSERT INTO Findables VALUES(74,'01A22102-17A5-71F2-8A49-37C6721522C6','fitment',3,20,'2024-04-20','as tyres from 20 April 2024','Tansy Norwell 195/65R15 on alloys',replace('legal tread\n92 118','\n',char(10)));
INSERT INTO Findables VALUES(75,'01A22102-17B6-7B33-AB28-7D6AC5700513','roll-out',3,20,'2024-05-04','of 4 May 2024','Tansy Norwell 195/65R15 on alloys',replace('level car park, half a tank, driver aboard\nDorrit Ames\n0.01\n2.2 bar\n2 mm\n1:1936mm\n3:5807 mm\n5:9.68 m','\n',char(10)));
INSERT INTO Findables VALUES(76,'01A22102-17BA-743D-9A1D-80E3151078A3','gear count',NULL,16,'2024-07-20','of 20 July 2024','Delmere D5 five-speed',replace('on the bench, paper disc on the input\nPiet Arlow\n0.02\n5\n0.1\n10:8.1\n20:16.2','\n',char(10)));
INSERT INTO Findables VALUES(78,'01A22102-17CC-7485-B911-AD07316D1D56','fitment',3,16,'2024-07-27','as gearbox from 27 July 2024','Tansy Delmere D5 five-speed',replace('own box jumps out of second, and 70 mph is tiring\n94 870','\n',char(10)));
INSERT INTO Findables VALUES(79,'01A22102-17DE-70E0-A6AC-9E894D36AB6C','job',3,NULL,NULL,'five-speed instead of the four-speed','Tansy','five-speed instead of the four-speed');
INSERT INTO Findables VALUES(80,'01A22102-17E2-76C7-A9FD-C99903F9ED47','work',3,NULL,'2024-07-20','','Tansy',replace('2 h 30 min\non the bench: top gear counted, new input seal\nPiet Arlow','\n',char(10)));
INSERT INTO Findables VALUES(81,'01A22102-17E6-7EB2-B77C-880095588566','work',3,NULL,'2024-07-27','','Tansy',replace('7 h\nfour-speed out, five-speed in, tunnel plate cut back','\n',char(10)));
INSERT INTO Findables VALUES(82,'01A22102-1802-72A0-860E-C93FD1E496FA','attachment',NULL,NULL,NULL,'receipt-five-speed.jpg','',replace('Tolland yard, gearbox\nreceipt-five-speed.jpg\nimage/jpeg\nb8077dc62af3595ff551935f89a1581b8be5598e26f11b0051e4fd86b203827a\n6 July 2024','\n',char(10)));
INSERT INTO Findables VALUES(83,'01A22102-1816-727B-811D-84726339A36F','cost',3,16,'2024-07-06','','Tansy Delmere D5 five-speed','five-speed gearbox');
INSERT INTO Findables VALUES(84,'01A22102-181E-7348-8382-809306761C86','cost',3,NULL,'2024-07-19','','Tansy','input seal, oil');
INSERT INTO Findables VALUES(85,'01A22102-1822-70DA-A302-BDB807870A90','road test',3,NULL,'2024-08-03','of 3 August 2024','Tansy',replace('5\nquiet; a tick from the speedometer cable\n2900 rpm\n70 mph','\n',char(10)));
INSERT INTO Findables VALUES(86,'01A22102-1832-7A75-8BA0-4BF233883DD1','attachment',NULL,NULL,NULL,'tansy.jpg','',replace('back on the road\ntansy.jpg\nimage/jpeg\nf27603f2d89ea799914aed112e52fcabed9856a2d2e21b16dbeec9060d992b23\nAugust 2024','\n',char(10)));
INSERT INTO Findables VALUES(87,'01A22102-1848-722C-B243-9DEFDD2ED06F','attachment',NULL,NULL,NULL,'tansy-on-stands.jpg','',replace('before: on stands, in primer, its own box still in\ntansy-on-stands.jpg\nimage/jpeg\n05262e5b0c89b2a8bbc88cd791c3f223a4d90f13b539b895605e9d9788d2cca6\nspring 2024','\n',char(10)));
INSERT INTO Findables VALUES(88,'01A22102-185A-7BCD-B471-23EFA165D2C4','vehicle',4,NULL,NULL,'Quillon','Quillon',replace('QL 70 0093\nfastback coupe of 1970\nQuillon\nFastback coupe, shell painted, going together.\nBastian Orme','\n',char(10)));
INSERT INTO Findables VALUES(89,'01A22102-1862-7E25-9D4A-2B01EA8B946B','cruise goal',4,NULL,NULL,'100 km/h at 3000 rpm','Quillon',replace('3000 rpm\n100 km/h\n150 rpm','\n',char(10)));
INSERT INTO Findables VALUES(90,'01A22102-1866-75EE-B60A-F733308DBBD6','engine',NULL,21,NULL,'Corvane 2.7 six','Corvane 2.7 six',replace('Tolland yard\nCorvane 2.7 six\nCV27-40032\n700 rpm\n6000 rpm\n15.05 mm\nCorvane six\nFlywheel\nRight\nClockwise','\n',char(10)));
INSERT INTO Findables VALUES(91,'01A22102-186A-773F-A5B7-9076A9C191A3','gearbox',NULL,22,NULL,'Delmere D4 close-ratio','Delmere D4 close-ratio',replace('Bastian''s shelf\nDelmere D4 close-ratio\nThe clutch disc came with the engine.\nD4C-511\n15.00 mm\nCorvane six\n26 × 1 in\n10 × 1 1/8 in\nRight\nClockwise\nFitted\n1\n2.98\n2\n1.94\n3\n1.34\n4\n1.00','\n',char(10)));
INSERT INTO Findables VALUES(92,'01A22102-186E-70DF-BEBB-22CB743C6F0C','axle',NULL,23,NULL,'Harrow narrow axle','Harrow narrow axle',replace('unknown, bought with the shell\nHarrow narrow axle\nHR-N-0815\nFitted','\n',char(10)));
INSERT INTO Findables VALUES(93,'01A22102-1872-7C55-8372-F6C850C0F49A','wheel-and-tyre set',NULL,24,NULL,'Norwell 185/70R14 on steel','Norwell 185/70R14 on steel',replace('bought new\nNorwell 185/70R14 on steel\n185/70R14 88T','\n',char(10)));
INSERT INTO Findables VALUES(94,'01A22102-1879-7628-9C0B-D5AEAD64FEF0','fitment',4,21,'2024-09-14','as engine from 14 September 2024','Quillon Corvane 2.7 six',replace('odometer set to nought with the new dial\n0','\n',char(10)));
INSERT INTO Findables VALUES(95,'01A22102-1883-7E72-B796-8F1DE9977D73','fitment',4,22,'2024-09-14','as gearbox from 14 September 2024','Quillon Delmere D4 close-ratio',replace('in with the engine\n0','\n',char(10)));
INSERT INTO Findables VALUES(96,'01A22102-1893-7D3B-A8E2-0E9667169CA3','fitment',4,23,'2024-11-02','as axle from 2 November 2024','Quillon Harrow narrow axle',replace('it came with the shell and bolts straight up\n0','\n',char(10)));
INSERT INTO Findables VALUES(97,'01A22102-18A7-7F36-8DCA-32D7E940903B','fitment',4,24,'2024-11-09','as tyres from 9 November 2024','Quillon Norwell 185/70R14 on steel',replace('onto its wheels at last\n0','\n',char(10)));
INSERT INTO Findables VALUES(98,'01A22102-18EB-7937-91F2-7D511CF87094','turn count',4,23,'2024-11-09','of 9 November 2024','Quillon Harrow narrow axle',replace('alone, three turns before the light went\n0.02\n0.25\n3:5 1/4','\n',char(10)));
INSERT INTO Findables VALUES(99,'01A22102-18EE-79D3-87C1-970F335C34FD','roll-out',4,24,'2024-11-16','of 16 November 2024','Quillon Norwell 185/70R14 on steel',replace('shed floor, shell without glass yet\nBastian Orme\n0.01\n2.0 bar\n2 mm\n1:1876mm\n2:3751mm\n4:7.503 m','\n',char(10)));
INSERT INTO Findables VALUES(100,'01A22102-18FB-72D8-B3DD-8BEB48121118','vehicle',5,NULL,NULL,'Haldor','Haldor',replace('HD4-1177-L\nlong-wheelbase 4×4 of 1977\nHaldor\nLong-wheelbase 4×4, carries the mowers.\nIlse Marrick\nIM 1177','\n',char(10)));
INSERT INTO Findables VALUES(101,'01A22102-1906-7770-8CF8-4A27281167F6','cruise goal',5,NULL,NULL,'90 km/h at 2700 rpm','Haldor',replace('2700 rpm\n90 km/h\nat most','\n',char(10)));
INSERT INTO Findables VALUES(102,'01A22102-1911-705A-953A-97C7839C32B9','engine',NULL,25,NULL,'Corvane 3.9 diesel','Corvane 3.9 diesel',replace('ground-power set, Ferrow\nCorvane 3.9 diesel\nCVD39-2260\n600 rpm\n3600 rpm\n15.05 mm\nCorvane industrial\nFlywheel\nRight\nClockwise','\n',char(10)));
INSERT INTO Findables VALUES(103,'01A22102-191E-774B-AA5E-051743CA114B','gearbox',NULL,26,NULL,'Delmere D4 heavy','Delmere D4 heavy',replace('its own\nDelmere D4 heavy\nD4H-902\n15.00 mm\nCorvane industrial\n10 × 1 1/8 in\nRight\nClockwise\nFitted\n1\n4.05\n2\n2.22\n3\n1.42\n4\n1.00','\n',char(10)));
INSERT INTO Findables VALUES(104,'01A22102-1922-7A7E-ADD5-A2A7B1619919','transfer case',NULL,27,NULL,'Marlow M2 transfer case','Marlow M2 transfer case',replace('its own\nMarlow M2 transfer case\nM2-4451\n1.00\n2.32\nFitted','\n',char(10)));
INSERT INTO Findables VALUES(105,'01A22102-1932-7614-8E1B-3A03D12E7F65','axle',NULL,28,NULL,'Harrow heavy rear 4.56','Harrow heavy rear 4.56',replace('its own\nHarrow heavy rear 4.56\nHR-H-120\nrack C','\n',char(10)));
INSERT INTO Findables VALUES(106,'01A22102-193A-73F9-B547-464603732A98','axle',NULL,29,NULL,'Harrow heavy front 4.56','Harrow heavy front 4.56',replace('its own\nHarrow heavy front 4.56\nHR-HF-121\nrack C','\n',char(10)));
INSERT INTO Findables VALUES(107,'01A22102-1942-7C46-901F-636FFED1BB0A','axle',NULL,30,NULL,'Harrow heavy rear 4.10','Harrow heavy rear 4.10',replace('Tolland yard, matched pair\nHarrow heavy rear 4.10\nHR-H-388','\n',char(10)));
INSERT INTO Findables VALUES(108,'01A22102-1946-751B-9599-751F3D7F7077','axle',NULL,31,NULL,'Harrow heavy front 4.10','Harrow heavy front 4.10',replace('Tolland yard, matched pair\nHarrow heavy front 4.10\nHR-HF-389\n4.10','\n',char(10)));
INSERT INTO Findables VALUES(109,'01A22102-194A-7E52-A9B2-48D4FBF61D88','wheel-and-tyre set',NULL,32,NULL,'Tarn LT235/85R16 on steel','Tarn LT235/85R16 on steel',replace('bought new\nTarn LT235/85R16 on steel\nLT235/85R16 120/116Q','\n',char(10)));
INSERT INTO Findables VALUES(110,'01A22102-1955-7267-84FE-5AF46867803D','fitment',5,25,'2024-04-27','as engine from 27 April 2024','Haldor Corvane 3.9 diesel',replace('the petrol engine was worn out\n140 220','\n',char(10)));
INSERT INTO Findables VALUES(111,'01A22102-1967-72A6-B8BF-9D5BC03F79B5','fitment',5,26,'2024-04-27','as gearbox from 27 April 2024','Haldor Delmere D4 heavy',replace('new bearings\n140 220','\n',char(10)));
INSERT INTO Findables VALUES(112,'01A22102-19A8-7316-80C7-27310758972C','fitment',5,27,'2024-04-27','as transfer case from 27 April 2024','Haldor Marlow M2 transfer case',replace('new seals\n140 220','\n',char(10)));
INSERT INTO Findables VALUES(113,'01A22102-19C7-7126-87AE-7D527692C3B7','fitment',5,28,'2024-05-11','as axle from 11 May 2024 to 5 October 2024','Haldor Harrow heavy rear 4.56',replace('its own\nthe diesel runs out of revs at 90 km/h on the old pair\n140 220\n143 008','\n',char(10)));
INSERT INTO Findables VALUES(114,'01A22102-19D3-79B5-9976-F7D22A40C3D0','fitment',5,29,'2024-05-11','as front axle from 11 May 2024 to 7 October 2024','Haldor Harrow heavy front 4.56',replace('its own\nhas to match the rear\n140 220\n143 008','\n',char(10)));
INSERT INTO Findables VALUES(115,'01A22102-19E3-7B7C-8B61-B3F89D680DFB','fitment',5,32,'2024-05-11','as tyres from 11 May 2024','Haldor Tarn LT235/85R16 on steel',replace('mud pattern, to clear the arches\n140 220','\n',char(10)));
INSERT INTO Findables VALUES(116,'01A22102-19EE-7B5A-8D0E-087A61FE6C48','roll-out',NULL,32,'2024-05-11','of 11 May 2024','Tarn LT235/85R16 on steel',replace('one loose wheel along the shed floor\n0.01\n3.5 bar\n2 mm\n1:2531mm\n3:7596mm','\n',char(10)));
INSERT INTO Findables VALUES(118,'01A22102-19F7-751C-B0E9-1AD4625DDF8E','fitment',5,30,'2024-10-05','as axle from 5 October 2024','Haldor Harrow heavy rear 4.10',replace('the diesel runs out of revs at 90 km/h on the old pair\n143 008','\n',char(10)));
INSERT INTO Findables VALUES(119,'01A22102-1A02-7571-9016-BF5866584025','turn count',NULL,31,'2024-10-06','of 6 October 2024','Harrow heavy front 4.10',replace('alone, axle on trestles before it went in\nThe third count is half a turn long: the telephone rang. Left in as counted; to be done again on the vehicle.\n0.02\n0.25\n20:41\n20:41 1/2','\n',char(10)));
INSERT INTO Findables VALUES(121,'01A22102-1A10-7528-AE8E-0A32FA5C0A89','fitment',5,31,'2024-10-07','as front axle from 7 October 2024','Haldor Harrow heavy front 4.10',replace('has to match the rear\n143 008','\n',char(10)));
INSERT INTO Findables VALUES(122,'01A22102-1A1A-7FCB-9987-A6BE12C8BBA8','turn count',5,31,'2024-10-08','of 8 October 2024','Haldor Harrow heavy front 4.10',replace('transfer case in two-wheel drive, front on stands\nIlse Marrick\n0.02\n0.25\n10:20 1/2\n20:41','\n',char(10)));
INSERT INTO Findables VALUES(123,'01A22102-1A1E-79FB-A1D9-3BC5DF99BBE7','job',5,NULL,NULL,'front propshaft','Haldor','front propshaft');
INSERT INTO Findables VALUES(124,'01A22102-1A4A-7A80-9FED-37466A24EDC8','work given out',5,NULL,NULL,'new joints and balancing','Haldor','new joints and balancing');
INSERT INTO Findables VALUES(125,'01A22102-1A56-7278-95A1-88F0E0DEBB8F','vehicle',6,NULL,NULL,'Pellow','Pellow',replace('not found yet\npanel van, about 1976\nPellow\nPanel van, for the shop itself once the others are out.\nthe shop','\n',char(10)));
INSERT INTO Findables VALUES(126,'01A22102-1A5A-766D-A982-5039EA997003','cruise goal',6,NULL,NULL,'95 km/h at 2600 rpm','Pellow',replace('2600 rpm\n95 km/h','\n',char(10)));
INSERT INTO Findables VALUES(127,'01A22102-1A5E-724F-85F3-CAF4A375DD7C','engine',NULL,33,NULL,'Corvane 2.1 four, van''s own','Corvane 2.1 four, van''s own',replace('its own\nCorvane 2.1 four, van''s own\nTurns over by hand.','\n',char(10)));
INSERT INTO Findables VALUES(128,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61','gearbox',NULL,34,NULL,'Delmere D4 column-shift','Delmere D4 column-shift',replace('its own\nDelmere D4 column-shift\n1\n3.5\n2\n2.1\n3\n1.4\n4\n1.0','\n',char(10)));
INSERT INTO Findables VALUES(129,'01A22102-1A76-70DD-9E62-EC8DFDC5D66B','axle',NULL,35,NULL,'van''s own axle, no tag','van''s own axle, no tag',replace('its own\nvan''s own axle, no tag','\n',char(10)));
INSERT INTO Findables VALUES(130,'01A22102-1AA9-7745-BF50-870282ABE906','fitment',6,33,'2024-08-31','as engine from 31 August 2024','Pellow Corvane 2.1 four, van''s own','as found');
INSERT INTO Findables VALUES(131,'01A22102-1AC7-7B7A-A719-CF85A192A1F2','fitment',6,34,'2024-08-31','as gearbox from 31 August 2024','Pellow Delmere D4 column-shift','as found');
INSERT INTO Findables VALUES(132,'01A22102-1AE0-73EC-8B28-843921F2419B','fitment',6,35,'2024-08-31','as axle from 31 August 2024','Pellow van''s own axle, no tag','as found');
INSERT INTO Findables VALUES(133,'01A22102-1B0A-7BBA-917D-AF0374BAB2C1','fitment',6,5,'2024-12-07','as tyres from 7 December 2024','Pellow Stavely 205/75R15 on steel',replace('came off Brindle, good enough to push it about\n118 300','\n',char(10)));
CREATE TABLE IF NOT EXISTS "Changes" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Changes" PRIMARY KEY AUTOINCREMENT,
    "ChangeSetId" INTEGER NOT NULL,
    "TableName" TEXT NOT NULL,
    "RowId" INTEGER NOT NULL,
    "RecordUid" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    "Op" TEXT NOT NULL,
    "Diff" TEXT NOT NULL,
    CONSTRAINT "CK_Changes_Diff" CHECK (json_valid("Diff")),
    CONSTRAINT "CK_Changes_Op" CHECK ("Op" IN ('Insert', 'Update', 'Delete')),
    CONSTRAINT "FK_Changes_ChangeSets_ChangeSetId" FOREIGN KEY ("ChangeSetId") REFERENCES "ChangeSets" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Changes VALUES(1,1,'Workshops',1,'01A22102-04AD-71B3-A04E-5F33F8C764A1',NULL,'Insert','{"Id":[null,1],"Name":[null,"Thorley''s shed"],"Address":[null,"Mill Lane 4, Ambery"],"Currency":[null,"EUR"],"Uid":[null,"01A22102-04AD-71B3-A04E-5F33F8C764A1"],"Version":[null,0]}');
INSERT INTO Changes VALUES(2,2,'Suppliers',1,'01A22102-09B4-7ECC-BD4E-2368A88E2FE0',NULL,'Insert','{"Id":[null,1],"Name":[null,"Tolland yard"],"Contact":[null,"row 6, ask for Bartle; closed on Mondays"],"GoodFor":[null,"axles, gearboxes"],"Notes":[null,""],"Uid":[null,"01A22102-09B4-7ECC-BD4E-2368A88E2FE0"],"Version":[null,0]}');
INSERT INTO Changes VALUES(3,3,'Suppliers',2,'01A22102-09C2-7A4E-A577-E0215F39177E',NULL,'Insert','{"Id":[null,2],"Name":[null,"Ambery Balancing"],"Contact":[null,"two weeks, cash"],"GoodFor":[null,"propshafts, balancing"],"Notes":[null,""],"Uid":[null,"01A22102-09C2-7A4E-A577-E0215F39177E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(4,4,'Notes',1,'01A22102-09C7-7FC7-82EE-C40FD9A59844',NULL,'Insert','{"Id":[null,1],"About":[null,"Supplier"],"AboutUid":[null,"01A22102-09B4-7ECC-BD4E-2368A88E2FE0"],"Date":[null,"2024-10-26"],"Title":[null,"tags"],"Body":[null,"Tags there have been moved between housings. Count before paying."],"Uid":[null,"01A22102-09C7-7FC7-82EE-C40FD9A59844"],"Version":[null,0]}');
INSERT INTO Changes VALUES(5,5,'Donors',1,'01A22102-09D4-7889-964D-56E2DF6B97D8',NULL,'Insert','{"Id":[null,1],"Name":[null,"Wexcombe delivery van"],"ChassisNumber":[null,"WX-DV-11853"],"SellerId":[null,1],"Fate":[null,"Sell"],"Place":[null,"behind the shed"],"Notes":[null,""],"BoughtEarliest":[null,"2024-03-01"],"BoughtLatest":[null,"2024-05-31"],"BoughtText":[null,"spring 2024"],"PriceCurrency":[null,"EUR"],"PriceMinor":[null,64000],"Uid":[null,"01A22102-09D4-7889-964D-56E2DF6B97D8"],"Version":[null,0]}');
INSERT INTO Changes VALUES(6,6,'DonorPieces',1,'01A22102-0A1A-7E3B-910B-F789B727CE2F',NULL,'Insert','{"Id":[null,1],"DonorId":[null,1],"What":[null,"engine with gearbox"],"State":[null,"Taken"],"DayEarliest":[null,"2024-03-09"],"DayLatest":[null,"2024-03-09"],"DayText":[null,"9 March 2024"],"Uid":[null,"01A22102-0A1A-7E3B-910B-F789B727CE2F"],"Version":[null,0]}');
INSERT INTO Changes VALUES(7,7,'DonorPieces',2,'01A22102-0B52-778A-AF88-0D5734AAAEEA',NULL,'Insert','{"Id":[null,2],"DonorId":[null,1],"What":[null,"front seats"],"State":[null,"Sold"],"IncomeCurrency":[null,"EUR"],"IncomeMinor":[null,9000],"Uid":[null,"01A22102-0B52-778A-AF88-0D5734AAAEEA"],"Version":[null,0]}');
INSERT INTO Changes VALUES(8,8,'DonorPieces',3,'01A22102-0B66-7EA9-8D4E-2F4161976DE6',NULL,'Insert','{"Id":[null,3],"DonorId":[null,1],"What":[null,"rear axle, bent"],"State":[null,"Remains"],"Uid":[null,"01A22102-0B66-7EA9-8D4E-2F4161976DE6"],"Version":[null,0]}');
INSERT INTO Changes VALUES(9,9,'Vehicles',1,'01A22102-0B6B-7A35-9308-04B67DB4AEDB',1,'Insert','{"Id":[null,1],"ChassisNumber":[null,"WX-PU-20417"],"DrivesInFront":[null,0],"Name":[null,"Brindle"],"NameKey":[null,"BRINDLE"],"Notes":[null,"Half-ton pickup, bare frame when it came. Wants to cross the county without shouting."],"OdometerUnit":[null,"Kilometres"],"Owner":[null,"Agnes Thorley"],"Registration":[null,"BT 417"],"State":[null,"InBuild"],"Uid":[null,"01A22102-0B6B-7A35-9308-04B67DB4AEDB"],"Version":[null,0],"Description":[null,"half-ton pick-up of 1971"]}');
INSERT INTO Changes VALUES(10,9,'Specs',1,'01A22102-0B6B-7A35-9308-04B67DB4AEDB',1,'Insert','{"Id":[null,1],"NumberSi":[null,1.07],"NumberSource":[null,"Measured"],"NumberText":[null,"1070 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"RearSprings"],"VehicleId":[null,1]}');
INSERT INTO Changes VALUES(11,10,'Goals',1,'01A22102-0B9E-7F94-963B-BC3EE633328C',1,'Insert','{"Id":[null,1],"EngineSpeed":[null,"2500 rpm"],"EngineSpeedSi":[null,41.666666666666664],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"100 km/h"],"SpeedSi":[null,27.77777777777778],"Tolerance":[null,"100 rpm"],"Uid":[null,"01A22102-0B9E-7F94-963B-BC3EE633328C"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(12,11,'Components',1,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,1],"Donor":[null,"Wexcombe delivery van, Tolland yard"],"IdleSi":[null,10.833333333333334],"IdleSource":[null,"Measured"],"IdleText":[null,"650 rpm"],"IdleUnit":[null,"rev/min"],"Kind":[null,"engine"],"Name":[null,"Corvane 3.3 six"],"Notes":[null,""],"RedlineSi":[null,76.66666666666667],"RedlineSource":[null,"MakersData"],"RedlineText":[null,"4600 rpm"],"RedlineUnit":[null,"rev/min"],"SerialNumber":[null,"CV33-118204"],"Shelf":[null,""],"Uid":[null,"01A22102-0BB2-70F7-B338-24769F71E45E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(13,11,'Specs',2,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,2],"ComponentId":[null,1],"NumberSi":[null,0.015050000000000001],"NumberSource":[null,"Measured"],"NumberText":[null,"15.05 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"PilotBore"]}');
INSERT INTO Changes VALUES(14,11,'Traits',1,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,1],"ComponentId":[null,1],"Trait":[null,"BellHousing"],"Text":[null,"Corvane six"]}');
INSERT INTO Changes VALUES(15,11,'Traits',2,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,2],"ComponentId":[null,1],"Trait":[null,"Plate"],"Text":[null,"Flywheel"]}');
INSERT INTO Changes VALUES(16,11,'Traits',3,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,3],"ComponentId":[null,1],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(17,11,'Traits',4,'01A22102-0BB2-70F7-B338-24769F71E45E',NULL,'Insert','{"Id":[null,4],"ComponentId":[null,1],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(18,12,'Components',2,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,2],"Donor":[null,"came with the engine"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4 four-speed"],"Notes":[null,""],"SerialNumber":[null,"D4-60921"],"Shelf":[null,""],"Uid":[null,"01A22102-0BC6-76DC-BE5D-3A841BCFB6F2"],"Version":[null,0]}');
INSERT INTO Changes VALUES(19,12,'Specs',3,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,3],"ComponentId":[null,2],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(20,12,'Traits',5,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,5],"ComponentId":[null,2],"Trait":[null,"BellHousing"],"Text":[null,"Corvane six"]}');
INSERT INTO Changes VALUES(21,12,'Traits',6,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,6],"ComponentId":[null,2],"Trait":[null,"InputSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(22,12,'Traits',7,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,7],"ComponentId":[null,2],"Trait":[null,"DiscSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(23,12,'Traits',8,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,8],"ComponentId":[null,2],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(24,12,'Traits',9,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,9],"ComponentId":[null,2],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(25,12,'Traits',10,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,10],"ComponentId":[null,2],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(26,12,'Gears',1,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,1],"TransmissionId":[null,2],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,3.54],"RatioSource":[null,"MakersData"],"RatioText":[null,"3.54"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(27,12,'Gears',2,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,2],"TransmissionId":[null,2],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2.12],"RatioSource":[null,"MakersData"],"RatioText":[null,"2.12"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(28,12,'Gears',3,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,3],"TransmissionId":[null,2],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.38],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.38"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(29,12,'Gears',4,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',NULL,'Insert','{"Id":[null,4],"TransmissionId":[null,2],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(30,13,'Components',3,'01A22102-0BE2-7FBE-B5C2-9A2225594B2E',NULL,'Insert','{"Id":[null,3],"Donor":[null,"came with the frame"],"Kind":[null,"axle"],"Name":[null,"Harrow axle, the frame''s own"],"Notes":[null,"Pinion chipped on two teeth; whines from 70 km/h."],"Pinion":[null,13],"Ring":[null,43],"SerialNumber":[null,"HR-3-0077"],"Shelf":[null,"under the bench, left"],"Uid":[null,"01A22102-0BE2-7FBE-B5C2-9A2225594B2E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(31,13,'Specs',4,'01A22102-0BE2-7FBE-B5C2-9A2225594B2E',NULL,'Insert','{"Id":[null,4],"ComponentId":[null,3],"NumberSi":[null,1.07],"NumberSource":[null,"Measured"],"NumberText":[null,"1070 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Perches"]}');
INSERT INTO Changes VALUES(32,13,'Traits',11,'01A22102-0BE2-7FBE-B5C2-9A2225594B2E',NULL,'Insert','{"Id":[null,11],"ComponentId":[null,3],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(33,14,'Components',4,'01A22102-0BEA-7177-9ECF-82D4BBD9947E',NULL,'Insert','{"Id":[null,4],"Donor":[null,"Tolland yard, row 6, no vehicle with it"],"Kind":[null,"axle"],"Name":[null,"Harrow yard axle"],"Notes":[null,"Cover and tag look newer than the housing."],"SerialNumber":[null,"HR-7-4410"],"Shelf":[null,""],"StatedRatioSi":[null,3.9],"StatedRatioSource":[null,"Tag"],"StatedRatioText":[null,"3.90"],"StatedRatioUnit":[null,""],"Uid":[null,"01A22102-0BEA-7177-9ECF-82D4BBD9947E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(34,14,'Specs',5,'01A22102-0BEA-7177-9ECF-82D4BBD9947E',NULL,'Insert','{"Id":[null,5],"ComponentId":[null,4],"NumberSi":[null,1.071],"NumberSource":[null,"Measured"],"NumberText":[null,"1071 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Perches"]}');
INSERT INTO Changes VALUES(35,14,'Traits',12,'01A22102-0BEA-7177-9ECF-82D4BBD9947E',NULL,'Insert','{"Id":[null,12],"ComponentId":[null,4],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(36,15,'Components',5,'01A22102-0BF2-7265-9ACB-746AB5C1F49D',NULL,'Insert','{"Id":[null,5],"Construction":[null,"Radial"],"Donor":[null,"came with the frame"],"Kind":[null,"wheels"],"Name":[null,"Stavely 205/75R15 on steel"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"205/75R15"],"Uid":[null,"01A22102-0BF2-7265-9ACB-746AB5C1F49D"],"Version":[null,0]}');
INSERT INTO Changes VALUES(37,16,'Components',6,'01A22102-0BFD-7275-81FA-15F8DA3D1E3E',NULL,'Insert','{"Id":[null,6],"Construction":[null,"Radial"],"Donor":[null,"bought new"],"Kind":[null,"wheels"],"Name":[null,"Stavely 235/75R15 on steel"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"235/75R15 105S"],"Uid":[null,"01A22102-0BFD-7275-81FA-15F8DA3D1E3E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(38,17,'Fitments',1,'01A22102-10D1-78FE-B9C2-434A7605E22A',1,'Insert','{"Id":[null,1],"ComponentId":[null,1],"FromDate":[null,"2024-03-09"],"FromOdometerMetres":[null,61204000],"FromOdometerText":[null,"61 204 km"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"the frame came without one"],"ReasonOff":[null,""],"Uid":[null,"01A22102-10D1-78FE-B9C2-434A7605E22A"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(39,18,'Fitments',2,'01A22102-1269-76FD-B2BE-ECBDFA255AD1',1,'Insert','{"Id":[null,2],"ComponentId":[null,2],"FromDate":[null,"2024-03-09"],"FromOdometerMetres":[null,61204000],"FromOdometerText":[null,"61 204 km"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"bolted up with the engine"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1269-76FD-B2BE-ECBDFA255AD1"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(40,19,'Fitments',3,'01A22102-12C9-7F39-AA05-784F36728AFE',1,'Insert','{"Id":[null,3],"ComponentId":[null,3],"FromDate":[null,"2024-03-16"],"FromOdometerMetres":[null,61204000],"FromOdometerText":[null,"61 204"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"back under the frame after cleaning"],"ReasonOff":[null,""],"Uid":[null,"01A22102-12C9-7F39-AA05-784F36728AFE"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(41,20,'Fitments',4,'01A22102-133D-7B53-BE39-F41A2220281E',1,'Insert','{"Id":[null,4],"ComponentId":[null,5],"FromDate":[null,"2024-03-16"],"FromOdometerMetres":[null,61204000],"FromOdometerText":[null,"61 204"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,2],"Position":[null,"Tyres"],"Reason":[null,"to roll the frame about"],"ReasonOff":[null,""],"Uid":[null,"01A22102-133D-7B53-BE39-F41A2220281E"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(42,21,'Fitments',4,'01A22102-133D-7B53-BE39-F41A2220281E',1,'Update','{"ReasonOff":["","taller tyres, to calm the engine on the road"],"ToDate":[null,"2024-05-25"],"ToOdometerMetres":[null,61690000],"ToOdometerText":[null,"61 690"],"ToOdometerUnit":[null,"km"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(43,21,'Fitments',5,'01A22102-1371-7514-82A3-3DF750334AA7',1,'Insert','{"Id":[null,5],"ComponentId":[null,6],"FromDate":[null,"2024-05-25"],"FromOdometerMetres":[null,61690000],"FromOdometerText":[null,"61 690"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Tyres"],"Reason":[null,"taller tyres, to calm the engine on the road"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1371-7514-82A3-3DF750334AA7"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(44,22,'Sessions',1,'01A22102-138A-7396-A86B-36C493B866D9',1,'Insert','{"Id":[null,1],"Align":[null,"0.01"],"ComponentId":[null,6],"Conditions":[null,"shed floor, level, driver aboard"],"Construction":[null,"Radial"],"Date":[null,"2024-06-01"],"Helper":[null,"Piet Arlow"],"Loaded":[null,1],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"2.4 bar"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-138A-7396-A86B-36C493B866D9"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(45,22,'Readings',1,'01A22102-138A-7396-A86B-36C493B866D9',1,'Insert','{"Id":[null,1],"SessionId":[null,1],"Ordinal":[null,1],"Text":[null,"1:2238mm"]}');
INSERT INTO Changes VALUES(46,22,'Readings',2,'01A22102-138A-7396-A86B-36C493B866D9',1,'Insert','{"Id":[null,2],"SessionId":[null,1],"Ordinal":[null,2],"Text":[null,"3:6 715 mm"]}');
INSERT INTO Changes VALUES(47,22,'Readings',3,'01A22102-138A-7396-A86B-36C493B866D9',1,'Insert','{"Id":[null,3],"SessionId":[null,1],"Ordinal":[null,3],"Text":[null,"5:11.19 m"]}');
INSERT INTO Changes VALUES(48,23,'Fitments',3,'01A22102-12C9-7F39-AA05-784F36728AFE',1,'Update','{"ReasonOff":["","own axle whines, pinion chipped; tag of this one says 3.90"],"ToDate":[null,"2024-10-12"],"ToOdometerMetres":[null,64105000],"ToOdometerText":[null,"64 105"],"ToOdometerUnit":[null,"km"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(49,23,'Fitments',6,'01A22102-13C4-7218-967C-42DF02395960',1,'Insert','{"Id":[null,6],"ComponentId":[null,4],"FromDate":[null,"2024-10-12"],"FromOdometerMetres":[null,64105000],"FromOdometerText":[null,"64 105"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"own axle whines, pinion chipped; tag of this one says 3.90"],"ReasonOff":[null,""],"Uid":[null,"01A22102-13C4-7218-967C-42DF02395960"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(50,24,'Sessions',2,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3',1,'Insert','{"Id":[null,2],"Align":[null,"0.02"],"ComponentId":[null,4],"Conditions":[null,"on stands, left wheel held, chalk on the flange"],"Date":[null,"2024-10-26"],"Helper":[null,"Piet Arlow"],"Hub":[null,""],"Method":[null,"turn count"],"Notes":[null,"Done because the engine was far too busy on the first drive."],"ReadTo":[null,"0.25"],"Uid":[null,"01A22102-13DA-708C-A2F5-CFD41BB4E2F3"],"VehicleId":[null,1],"Version":[null,0],"Wheels":[null,"OneHeld"]}');
INSERT INTO Changes VALUES(51,24,'Readings',4,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3',1,'Insert','{"Id":[null,4],"SessionId":[null,2],"Ordinal":[null,1],"Text":[null,"10:23.7"]}');
INSERT INTO Changes VALUES(52,24,'Readings',5,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3',1,'Insert','{"Id":[null,5],"SessionId":[null,2],"Ordinal":[null,2],"Text":[null,"10:23 3/4"]}');
INSERT INTO Changes VALUES(53,24,'Readings',6,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3',1,'Insert','{"Id":[null,6],"SessionId":[null,2],"Ordinal":[null,3],"Text":[null,"10:23 3/4"]}');
INSERT INTO Changes VALUES(54,25,'RoadTests',1,'01A22102-140B-78E0-B006-1042F5FE17AD',1,'Insert','{"Id":[null,1],"VehicleId":[null,1],"Date":[null,"2024-10-19"],"Gear":[null,"4"],"Temperatures":[null,""],"Vibration":[null,""],"Noises":[null,"none from the axle; the engine drowns it"],"Defects":[null,"far too busy: this is no 3.90"],"Fix":[null,""],"EngineSpeedSi":[null,58.333333333333336],"EngineSpeedSource":[null,"OwnersWord"],"EngineSpeedText":[null,"3500 rpm"],"EngineSpeedUnit":[null,"rev/min"],"SpeedSi":[null,27.77777777777778],"SpeedSource":[null,"Measured"],"SpeedText":[null,"100 km/h"],"SpeedUnit":[null,"km/h"],"Uid":[null,"01A22102-140B-78E0-B006-1042F5FE17AD"],"Version":[null,0]}');
INSERT INTO Changes VALUES(55,26,'WantedParts',1,'01A22102-1416-7AF3-8ECE-F4221AF85D58',1,'Insert','{"Id":[null,1],"DroppedFor":[null,""],"Kind":[null,"Axle"],"MostCurrency":[null,"EUR"],"MostMinor":[null,35000],"Notes":[null,""],"State":[null,"Hunting"],"Title":[null,"longer axle"],"Uid":[null,"01A22102-1416-7AF3-8ECE-F4221AF85D58"],"VehicleId":[null,1],"Version":[null,0]}');
INSERT INTO Changes VALUES(56,26,'WantedWindows',1,'01A22102-1416-7AF3-8ECE-F4221AF85D58',1,'Insert','{"Id":[null,1],"WantedPartId":[null,1],"Ordinal":[null,1],"Quantity":[null,"AxleRatio"],"Low":[null,"3.23"],"High":[null,"3.49"],"LowSi":[null,3.23],"HighSi":[null,3.49]}');
INSERT INTO Changes VALUES(57,27,'Offers',1,'01A22102-142F-70C4-A78A-F9DA6A561CD5',1,'Insert','{"Id":[null,1],"WantedPartId":[null,1],"What":[null,"axle from a late pickup, cover off"],"Place":[null,"advert, Ambery board"],"Claimed":[null,"3.36"],"Contact":[null,"evenings"],"Seen":[null,"2024-11-09"],"Notes":[null,"37 teeth painted on the cover; 1070 between the perches, he says"],"PriceCurrency":[null,"EUR"],"PriceMinor":[null,28000],"Uid":[null,"01A22102-142F-70C4-A78A-F9DA6A561CD5"],"Version":[null,0]}');
INSERT INTO Changes VALUES(58,28,'Offers',2,'01A22102-14B6-7B62-81F4-7F09FE8932F0',1,'Insert','{"Id":[null,2],"WantedPartId":[null,1],"What":[null,"axle, row 2, no vehicle with it"],"Place":[null,"Tolland yard"],"SupplierId":[null,1],"Claimed":[null,"4.10"],"Contact":[null,""],"Seen":[null,"2024-11-02"],"Notes":[null,""],"PriceCurrency":[null,"EUR"],"PriceMinor":[null,12000],"Uid":[null,"01A22102-14B6-7B62-81F4-7F09FE8932F0"],"Version":[null,0]}');
INSERT INTO Changes VALUES(59,29,'Jobs',1,'01A22102-14BE-7C60-9630-5E485F8DF09C',1,'Insert','{"Id":[null,1],"VehicleId":[null,1],"Title":[null,"fit the longer axle"],"Description":[null,""],"State":[null,"ToDo"],"Due":[null,"2025-04-01"],"BeforeHandover":[null,1],"BlockedBy":[null,""],"WaitsForId":[null,1],"Uid":[null,"01A22102-14BE-7C60-9630-5E485F8DF09C"],"Version":[null,0]}');
INSERT INTO Changes VALUES(60,30,'Jobs',2,'01A22102-14CE-7C02-A81D-AB1AF09CF9F3',1,'Insert','{"Id":[null,2],"VehicleId":[null,1],"Title":[null,"rear brake lines"],"Description":[null,""],"State":[null,"UnderWay"],"BeforeHandover":[null,1],"BlockedBy":[null,""],"Uid":[null,"01A22102-14CE-7C02-A81D-AB1AF09CF9F3"],"Version":[null,0]}');
INSERT INTO Changes VALUES(61,31,'WorkEntries',1,'01A22102-14D2-7011-93E0-CB243C019505',1,'Insert','{"Id":[null,1],"JobId":[null,2],"Date":[null,"2024-11-16"],"Hours":[null,"3 h 30 min"],"Minutes":[null,210],"Who":[null,"Agnes"],"What":[null,"old lines off, new ones bent"],"Uid":[null,"01A22102-14D2-7011-93E0-CB243C019505"],"Version":[null,0]}');
INSERT INTO Changes VALUES(62,32,'Costs',1,'01A22102-1526-79A5-B32D-4697ED69711E',1,'Insert','{"Id":[null,1],"VehicleId":[null,1],"JobId":[null,2],"Date":[null,"2024-11-15"],"What":[null,"brake line and unions"],"AmountCurrency":[null,"EUR"],"AmountMinor":[null,4860],"Uid":[null,"01A22102-1526-79A5-B32D-4697ED69711E"],"Version":[null,0]}');
INSERT INTO Changes VALUES(63,33,'Costs',2,'01A22102-1532-73D5-90CB-5B4FDF31E19F',1,'Insert','{"Id":[null,2],"VehicleId":[null,1],"Date":[null,"2024-10-12"],"What":[null,"yard axle"],"SupplierId":[null,1],"AmountCurrency":[null,"EUR"],"AmountMinor":[null,15000],"Uid":[null,"01A22102-1532-73D5-90CB-5B4FDF31E19F"],"Version":[null,0]}');
INSERT INTO Changes VALUES(64,34,'Deadlines',1,'01A22102-1536-7CC4-9033-E031F2C641E4',1,'Insert','{"Id":[null,1],"VehicleId":[null,1],"What":[null,"test station, first look"],"Day":[null,"2025-05-15"],"Uid":[null,"01A22102-1536-7CC4-9033-E031F2C641E4"],"Version":[null,0]}');
INSERT INTO Changes VALUES(65,35,'Decisions',1,'01A22102-153A-7941-A452-8365EE840EF4',1,'Insert','{"Id":[null,1],"VehicleId":[null,1],"Date":[null,"2024-10-27"],"What":[null,"axle between 3.23 and 3.49 instead of still taller tyres"],"Why":[null,"taller tyres would reach the arches and read the speedometer low"],"AgreedBy":[null,"Agnes Thorley"],"Uid":[null,"01A22102-153A-7941-A452-8365EE840EF4"],"Version":[null,0]}');
INSERT INTO Changes VALUES(66,36,'Notes',2,'01A22102-153E-7AEE-8BDE-37C076F45EE7',NULL,'Insert','{"Id":[null,2],"About":[null,"Job"],"AboutUid":[null,"01A22102-14BE-7C60-9630-5E485F8DF09C"],"Date":[null,"2024-10-27"],"Title":[null,"before lifting"],"Body":[null,"Two stands under the frame, not the axle. Ask Piet for a Saturday."],"Uid":[null,"01A22102-153E-7AEE-8BDE-37C076F45EE7"],"Version":[null,0]}');
INSERT INTO Changes VALUES(67,37,'Vehicles',2,'01A22102-1543-790D-AA1D-414F81A307F5',2,'Insert','{"Id":[null,2],"ChassisNumber":[null,"OT 5529"],"DrivesInFront":[null,0],"Name":[null,"Ottery"],"NameKey":[null,"OTTERY"],"Notes":[null,"Open tourer. Handed over with its sheet in September 2024."],"OdometerUnit":[null,"Miles"],"Owner":[null,"Rufus Keel"],"Registration":[null,"KEE 55"],"State":[null,"HandedOver"],"Uid":[null,"01A22102-1543-790D-AA1D-414F81A307F5"],"Version":[null,0],"Description":[null,"open tourer of 1955"]}');
INSERT INTO Changes VALUES(68,38,'Goals',2,'01A22102-154E-7E57-88E3-77B2A68576B1',2,'Insert','{"Id":[null,2],"EngineSpeed":[null,"2550 rpm"],"EngineSpeedSi":[null,42.5],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"60 mph"],"SpeedSi":[null,26.8224],"Tolerance":[null,""],"Uid":[null,"01A22102-154E-7E57-88E3-77B2A68576B1"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(69,39,'Components',7,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,7],"Donor":[null,"its own"],"IdleSi":[null,12.5],"IdleSource":[null,"Measured"],"IdleText":[null,"750 rpm"],"IdleUnit":[null,"rev/min"],"Kind":[null,"engine"],"Name":[null,"Corvane 2.1 four"],"Notes":[null,""],"RedlineSi":[null,86.66666666666667],"RedlineSource":[null,"OwnersWord"],"RedlineText":[null,"5200 rpm"],"RedlineUnit":[null,"rev/min"],"SerialNumber":[null,"CV21-7715"],"Shelf":[null,""],"Uid":[null,"01A22102-1552-7572-AA27-EEF376057F7A"],"Version":[null,0]}');
INSERT INTO Changes VALUES(70,39,'Specs',6,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,6],"ComponentId":[null,7],"NumberSi":[null,0.015050000000000001],"NumberSource":[null,"Measured"],"NumberText":[null,"15.05 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"PilotBore"]}');
INSERT INTO Changes VALUES(71,39,'Traits',13,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,13],"ComponentId":[null,7],"Trait":[null,"BellHousing"],"Text":[null,"Corvane four"]}');
INSERT INTO Changes VALUES(72,39,'Traits',14,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,14],"ComponentId":[null,7],"Trait":[null,"Plate"],"Text":[null,"Flywheel"]}');
INSERT INTO Changes VALUES(73,39,'Traits',15,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,15],"ComponentId":[null,7],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(74,39,'Traits',16,'01A22102-1552-7572-AA27-EEF376057F7A',NULL,'Insert','{"Id":[null,16],"ComponentId":[null,7],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(75,40,'Components',8,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,8],"Donor":[null,"its own"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4 light"],"Notes":[null,""],"SerialNumber":[null,"D4L-1123"],"Shelf":[null,""],"Uid":[null,"01A22102-1556-7A89-9F84-863E0DA3C5D8"],"Version":[null,0]}');
INSERT INTO Changes VALUES(76,40,'Specs',7,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,7],"ComponentId":[null,8],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(77,40,'Traits',17,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,17],"ComponentId":[null,8],"Trait":[null,"BellHousing"],"Text":[null,"Corvane four"]}');
INSERT INTO Changes VALUES(78,40,'Traits',18,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,18],"ComponentId":[null,8],"Trait":[null,"InputSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(79,40,'Traits',19,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,19],"ComponentId":[null,8],"Trait":[null,"DiscSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(80,40,'Traits',20,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,20],"ComponentId":[null,8],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(81,40,'Traits',21,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,21],"ComponentId":[null,8],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(82,40,'Traits',22,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,22],"ComponentId":[null,8],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(83,40,'Gears',5,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,5],"TransmissionId":[null,8],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,3.41],"RatioSource":[null,"MakersData"],"RatioText":[null,"3.41"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(84,40,'Gears',6,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,6],"TransmissionId":[null,8],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2],"RatioSource":[null,"MakersData"],"RatioText":[null,"2.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(85,40,'Gears',7,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,7],"TransmissionId":[null,8],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.37],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.37"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(86,40,'Gears',8,'01A22102-1556-7A89-9F84-863E0DA3C5D8',NULL,'Insert','{"Id":[null,8],"TransmissionId":[null,8],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(87,41,'Components',9,'01A22102-1558-781A-B2B4-7631727D652C',NULL,'Insert','{"Id":[null,9],"Donor":[null,"swap meet at Ferrow"],"Kind":[null,"overdrive"],"Name":[null,"Delmere step-up unit"],"Notes":[null,""],"OverdriveRatioSi":[null,0.78],"OverdriveRatioSource":[null,"MakersData"],"OverdriveRatioText":[null,"0.78"],"OverdriveRatioUnit":[null,""],"SerialNumber":[null,"SU-338"],"Shelf":[null,""],"Uid":[null,"01A22102-1558-781A-B2B4-7631727D652C"],"Version":[null,0]}');
INSERT INTO Changes VALUES(88,41,'Traits',23,'01A22102-1558-781A-B2B4-7631727D652C',NULL,'Insert','{"Id":[null,23],"ComponentId":[null,9],"Trait":[null,"Output"],"Text":[null,"flange 4 × 76 mm"]}');
INSERT INTO Changes VALUES(89,42,'Components',10,'01A22102-1562-7333-BB56-C95260B8522A',NULL,'Insert','{"Id":[null,10],"Donor":[null,"its own"],"Kind":[null,"axle"],"Name":[null,"Harrow light axle, short"],"Notes":[null,""],"SerialNumber":[null,"HR-L-209"],"Shelf":[null,"rack B, bottom"],"StatedRatioSi":[null,4.3],"StatedRatioSource":[null,"OwnersWord"],"StatedRatioText":[null,"4.3"],"StatedRatioUnit":[null,""],"Uid":[null,"01A22102-1562-7333-BB56-C95260B8522A"],"Version":[null,0]}');
INSERT INTO Changes VALUES(90,42,'Traits',24,'01A22102-1562-7333-BB56-C95260B8522A',NULL,'Insert','{"Id":[null,24],"ComponentId":[null,10],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(91,42,'Traits',25,'01A22102-1562-7333-BB56-C95260B8522A',NULL,'Insert','{"Id":[null,25],"ComponentId":[null,10],"Trait":[null,"PinionFlange"],"Text":[null,"flange 4 × 76 mm"]}');
INSERT INTO Changes VALUES(92,43,'Components',11,'01A22102-1566-763B-BE49-90AFE659FAB6',NULL,'Insert','{"Id":[null,11],"Donor":[null,"saloon wreck at Ferrow"],"Kind":[null,"axle"],"Name":[null,"Harrow light axle, long"],"Notes":[null,""],"SerialNumber":[null,"HR-L-311"],"Shelf":[null,""],"StatedRatioSi":[null,3.9],"StatedRatioSource":[null,"Tag"],"StatedRatioText":[null,"3.90"],"StatedRatioUnit":[null,""],"Uid":[null,"01A22102-1566-763B-BE49-90AFE659FAB6"],"Version":[null,0]}');
INSERT INTO Changes VALUES(93,43,'Traits',26,'01A22102-1566-763B-BE49-90AFE659FAB6',NULL,'Insert','{"Id":[null,26],"ComponentId":[null,11],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(94,43,'Traits',27,'01A22102-1566-763B-BE49-90AFE659FAB6',NULL,'Insert','{"Id":[null,27],"ComponentId":[null,11],"Trait":[null,"PinionFlange"],"Text":[null,"flange 4 × 76 mm"]}');
INSERT INTO Changes VALUES(95,44,'Components',12,'01A22102-1576-7B85-B121-0C897BDACAAD',NULL,'Insert','{"Id":[null,12],"Donor":[null,"its own"],"Kind":[null,"propshaft"],"Name":[null,"Ottery''s own propshaft"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"Uid":[null,"01A22102-1576-7B85-B121-0C897BDACAAD"],"Version":[null,0]}');
INSERT INTO Changes VALUES(96,44,'Traits',28,'01A22102-1576-7B85-B121-0C897BDACAAD',NULL,'Insert','{"Id":[null,28],"ComponentId":[null,12],"Trait":[null,"FrontEnd"],"Text":[null,"flange 4 × 76 mm"]}');
INSERT INTO Changes VALUES(97,44,'Traits',29,'01A22102-1576-7B85-B121-0C897BDACAAD',NULL,'Insert','{"Id":[null,29],"ComponentId":[null,12],"Trait":[null,"RearEnd"],"Text":[null,"flange 4 × 76 mm"]}');
INSERT INTO Changes VALUES(98,44,'ShaftPieces',1,'01A22102-1576-7B85-B121-0C897BDACAAD',NULL,'Insert','{"Id":[null,1],"PropshaftId":[null,12],"Ordinal":[null,1],"Yokes":[null,"InLine"],"LengthSi":[null,1.24],"LengthSource":[null,"Measured"],"LengthText":[null,"1240 mm"],"LengthUnit":[null,"mm"],"OuterSi":[null,0.0762],"OuterSource":[null,"Measured"],"OuterText":[null,"76.2 mm"],"OuterUnit":[null,"mm"],"WallSi":[null,0.0021000000000000003],"WallSource":[null,"Measured"],"WallText":[null,"2.1 mm"],"WallUnit":[null,"mm"]}');
INSERT INTO Changes VALUES(99,45,'Components',13,'01A22102-158A-7BC0-8DD8-E4EA34A45180',NULL,'Insert','{"Id":[null,13],"Construction":[null,"Bias"],"Donor":[null,"bought new"],"Kind":[null,"wheels"],"Name":[null,"Tarn 165/80-15 on wires"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"165/80-15"],"Uid":[null,"01A22102-158A-7BC0-8DD8-E4EA34A45180"],"Version":[null,0]}');
INSERT INTO Changes VALUES(100,46,'Fitments',7,'01A22102-1595-783B-9C89-2C4AD450717E',2,'Insert','{"Id":[null,7],"ComponentId":[null,7],"FromDate":[null,"2024-03-02"],"FromOdometerMetres":[null,61816512.384],"FromOdometerText":[null,"38 411"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"rebuilt"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1595-783B-9C89-2C4AD450717E"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(101,47,'Fitments',8,'01A22102-15A7-76EB-B8AC-284872BE5DE8',2,'Insert','{"Id":[null,8],"ComponentId":[null,8],"FromDate":[null,"2024-03-02"],"FromOdometerMetres":[null,61816512.384],"FromOdometerText":[null,"38 411"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"rebuilt with the engine"],"ReasonOff":[null,""],"Uid":[null,"01A22102-15A7-76EB-B8AC-284872BE5DE8"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(102,48,'Fitments',9,'01A22102-160B-795D-B20F-9E0D69DB8A62',2,'Insert','{"Id":[null,9],"ComponentId":[null,12],"FromDate":[null,"2024-03-16"],"FromOdometerMetres":[null,61816512.384],"FromOdometerText":[null,"38 411"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,3],"Position":[null,"Propshaft"],"Reason":[null,"balanced, new joints"],"ReasonOff":[null,""],"Uid":[null,"01A22102-160B-795D-B20F-9E0D69DB8A62"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(103,49,'Fitments',10,'01A22102-163C-772F-A0F3-1DE50C0F6509',2,'Insert','{"Id":[null,10],"ComponentId":[null,10],"FromDate":[null,"2024-03-23"],"FromOdometerMetres":[null,61816512.384],"FromOdometerText":[null,"38 411"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"its own, new seals"],"ReasonOff":[null,""],"Uid":[null,"01A22102-163C-772F-A0F3-1DE50C0F6509"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(104,50,'Fitments',11,'01A22102-1654-73ED-9797-23B39C11A748',2,'Insert','{"Id":[null,11],"ComponentId":[null,13],"FromDate":[null,"2024-04-06"],"FromOdometerMetres":[null,61818121.728],"FromOdometerText":[null,"38 412"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Tyres"],"Reason":[null,"right size for the arches"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1654-73ED-9797-23B39C11A748"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(105,51,'Sessions',3,'01A22102-165E-7371-B1FB-8F9823D43AB1',NULL,'Insert','{"Id":[null,3],"Align":[null,"0.01"],"ComponentId":[null,13],"Conditions":[null,"loose wheel along the bench rail"],"Construction":[null,"Bias"],"Date":[null,"2024-04-06"],"Helper":[null,""],"Loaded":[null,0],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"26 psi"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-165E-7371-B1FB-8F9823D43AB1"],"Version":[null,0]}');
INSERT INTO Changes VALUES(106,51,'Readings',7,'01A22102-165E-7371-B1FB-8F9823D43AB1',NULL,'Insert','{"Id":[null,7],"SessionId":[null,3],"Ordinal":[null,1],"Text":[null,"1:2028mm"]}');
INSERT INTO Changes VALUES(107,51,'Readings',8,'01A22102-165E-7371-B1FB-8F9823D43AB1',NULL,'Insert','{"Id":[null,8],"SessionId":[null,3],"Ordinal":[null,2],"Text":[null,"2:4057mm"]}');
INSERT INTO Changes VALUES(108,52,'Fitments',10,'01A22102-163C-772F-A0F3-1DE50C0F6509',2,'Update','{"ReasonOff":["","too busy at 60; the long one from Ferrow"],"ToDate":[null,"2024-06-15"],"ToOdometerMetres":[null,62796602.88],"ToOdometerText":[null,"39 020 mi"],"ToOdometerUnit":[null,"mi"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(109,52,'Fitments',12,'01A22102-166C-7F32-8377-714B755F4EEF',2,'Insert','{"Id":[null,12],"ComponentId":[null,11],"FromDate":[null,"2024-06-15"],"FromOdometerMetres":[null,62796602.88],"FromOdometerText":[null,"39 020 mi"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"too busy at 60; the long one from Ferrow"],"ReasonOff":[null,""],"Uid":[null,"01A22102-166C-7F32-8377-714B755F4EEF"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(110,53,'Sessions',4,'01A22102-167A-73F5-981F-292CCD8BDE71',2,'Insert','{"Id":[null,4],"Align":[null,"0.02"],"ComponentId":[null,11],"Conditions":[null,"rolled along the yard, both wheels on the ground"],"Date":[null,"2024-06-16"],"Helper":[null,"Rufus Keel"],"Hub":[null,""],"Method":[null,"turn count"],"Notes":[null,""],"ReadTo":[null,"0.25"],"Uid":[null,"01A22102-167A-73F5-981F-292CCD8BDE71"],"VehicleId":[null,2],"Version":[null,0],"Wheels":[null,"Together"]}');
INSERT INTO Changes VALUES(111,53,'Readings',9,'01A22102-167A-73F5-981F-292CCD8BDE71',2,'Insert','{"Id":[null,9],"SessionId":[null,4],"Ordinal":[null,1],"Text":[null,"10:39"]}');
INSERT INTO Changes VALUES(112,53,'Readings',10,'01A22102-167A-73F5-981F-292CCD8BDE71',2,'Insert','{"Id":[null,10],"SessionId":[null,4],"Ordinal":[null,2],"Text":[null,"20:78"]}');
INSERT INTO Changes VALUES(113,54,'Sessions',5,'01A22102-1682-75CE-95AA-1C1B06D1C764',2,'Insert','{"Id":[null,5],"Align":[null,"0.01"],"ComponentId":[null,13],"Conditions":[null,"same run along the yard"],"Construction":[null,"Bias"],"Date":[null,"2024-06-16"],"Helper":[null,"Rufus Keel"],"Loaded":[null,1],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"26 psi"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-1682-75CE-95AA-1C1B06D1C764"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(114,54,'Readings',11,'01A22102-1682-75CE-95AA-1C1B06D1C764',2,'Insert','{"Id":[null,11],"SessionId":[null,5],"Ordinal":[null,1],"Text":[null,"2:12 ft 8 in"]}');
INSERT INTO Changes VALUES(115,54,'Readings',12,'01A22102-1682-75CE-95AA-1C1B06D1C764',2,'Insert','{"Id":[null,12],"SessionId":[null,5],"Ordinal":[null,2],"Text":[null,"4:25 ft 4 in"]}');
INSERT INTO Changes VALUES(116,54,'Readings',13,'01A22102-1682-75CE-95AA-1C1B06D1C764',2,'Insert','{"Id":[null,13],"SessionId":[null,5],"Ordinal":[null,3],"Text":[null,"6:38 ft"]}');
INSERT INTO Changes VALUES(117,55,'Fitments',13,'01A22102-16AE-746E-A41D-156507DA0AD9',2,'Insert','{"Id":[null,13],"ComponentId":[null,9],"FromDate":[null,"2024-08-10"],"FromOdometerMetres":[null,63639899.136],"FromOdometerText":[null,"39 544"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Overdrive"],"Reason":[null,"Rufus wants it quiet at 60"],"ReasonOff":[null,""],"Uid":[null,"01A22102-16AE-746E-A41D-156507DA0AD9"],"VehicleId":[null,2],"Version":[null,0]}');
INSERT INTO Changes VALUES(118,56,'Vehicles',3,'01A22102-16C3-7BF3-92EE-6A94334BEA5E',3,'Insert','{"Id":[null,3],"BodyClass":[null,"saloon, 1980–95"],"ChassisNumber":[null,"TN-88-3105"],"DrivesInFront":[null,0],"Name":[null,"Tansy"],"NameKey":[null,"TANSY"],"Notes":[null,"Estate, daily use."],"OdometerUnit":[null,"Miles"],"Owner":[null,"Dorrit Ames"],"Registration":[null,"D 3105 A"],"RollingClass":[null,"modern radial"],"State":[null,"OnTheRoad"],"Uid":[null,"01A22102-16C3-7BF3-92EE-6A94334BEA5E"],"Version":[null,0],"Description":[null,"estate of 1988, five doors"]}');
INSERT INTO Changes VALUES(119,56,'Specs',8,'01A22102-16C3-7BF3-92EE-6A94334BEA5E',3,'Insert','{"Id":[null,8],"NumberSi":[null,1360],"NumberSource":[null,"Measured"],"NumberText":[null,"1360 kg ± 10 kg"],"NumberUnit":[null,"kg"],"Spec":[null,"Mass"],"VehicleId":[null,3]}');
INSERT INTO Changes VALUES(120,56,'Specs',9,'01A22102-16C3-7BF3-92EE-6A94334BEA5E',3,'Insert','{"Id":[null,9],"NumberSi":[null,830],"NumberSource":[null,"Measured"],"NumberText":[null,"830 kg ± 5 kg"],"NumberUnit":[null,"kg"],"Spec":[null,"FrontAxleMass"],"VehicleId":[null,3]}');
INSERT INTO Changes VALUES(121,56,'Specs',10,'01A22102-16C3-7BF3-92EE-6A94334BEA5E',3,'Insert','{"Id":[null,10],"NumberSi":[null,860],"NumberSource":[null,"Measured"],"NumberText":[null,"860 kg ± 5 kg"],"NumberUnit":[null,"kg"],"Spec":[null,"RearAxleMass"],"VehicleId":[null,3]}');
INSERT INTO Changes VALUES(122,57,'Goals',3,'01A22102-16CE-726F-BC80-1953CFFF0BE3',3,'Insert','{"Id":[null,3],"EngineSpeed":[null,"2900 rpm"],"EngineSpeedSi":[null,48.333333333333336],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"70 mph"],"SpeedSi":[null,31.2928],"Tolerance":[null,""],"Uid":[null,"01A22102-16CE-726F-BC80-1953CFFF0BE3"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(123,58,'Components',14,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,14],"Donor":[null,"its own"],"IdleSi":[null,13.333333333333334],"IdleSource":[null,"MakersData"],"IdleText":[null,"800 rpm"],"IdleUnit":[null,"rev/min"],"Kind":[null,"engine"],"Name":[null,"Corvane 2.3 four"],"Notes":[null,""],"RedlineSi":[null,96.66666666666667],"RedlineSource":[null,"MakersData"],"RedlineText":[null,"5800 rpm"],"RedlineUnit":[null,"rev/min"],"SerialNumber":[null,"CV23-90411"],"Shelf":[null,""],"Uid":[null,"01A22102-16D2-7B00-A31A-68A8696964FA"],"Version":[null,0]}');
INSERT INTO Changes VALUES(124,58,'Specs',11,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,11],"ComponentId":[null,14],"NumberSi":[null,188],"NumberSource":[null,"MakersData"],"NumberText":[null,"1200:158 Nm; 2400:182 Nm; 3200:188 Nm; 5400:156 Nm"],"NumberUnit":[null,"N·m"],"Spec":[null,"TorquePoints"]}');
INSERT INTO Changes VALUES(125,58,'Specs',12,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,12],"ComponentId":[null,14],"NumberSi":[null,0.015050000000000001],"NumberSource":[null,"Measured"],"NumberText":[null,"15.05 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"PilotBore"]}');
INSERT INTO Changes VALUES(126,58,'Traits',30,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,30],"ComponentId":[null,14],"Trait":[null,"BellHousing"],"Text":[null,"Corvane four"]}');
INSERT INTO Changes VALUES(127,58,'Traits',31,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,31],"ComponentId":[null,14],"Trait":[null,"Plate"],"Text":[null,"Flywheel"]}');
INSERT INTO Changes VALUES(128,58,'Traits',32,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,32],"ComponentId":[null,14],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(129,58,'Traits',33,'01A22102-16D2-7B00-A31A-68A8696964FA',NULL,'Insert','{"Id":[null,33],"ComponentId":[null,14],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(130,59,'Components',15,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,15],"Donor":[null,"its own"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4, Tansy''s own"],"Notes":[null,"Jumps out of second."],"SerialNumber":[null,"D4-33870"],"Shelf":[null,"rack A, top"],"Uid":[null,"01A22102-16F0-7F48-A1F7-0BCE2C6F1573"],"Version":[null,0]}');
INSERT INTO Changes VALUES(131,59,'Specs',13,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,13],"ComponentId":[null,15],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(132,59,'Traits',34,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,34],"ComponentId":[null,15],"Trait":[null,"BellHousing"],"Text":[null,"Corvane four"]}');
INSERT INTO Changes VALUES(133,59,'Traits',35,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,35],"ComponentId":[null,15],"Trait":[null,"InputSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(134,59,'Traits',36,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,36],"ComponentId":[null,15],"Trait":[null,"DiscSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(135,59,'Traits',37,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,37],"ComponentId":[null,15],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(136,59,'Traits',38,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,38],"ComponentId":[null,15],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(137,59,'Traits',39,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,39],"ComponentId":[null,15],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(138,59,'Gears',9,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,9],"TransmissionId":[null,15],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,3.54],"RatioSource":[null,"MakersData"],"RatioText":[null,"3.54"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(139,59,'Gears',10,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,10],"TransmissionId":[null,15],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2.12],"RatioSource":[null,"MakersData"],"RatioText":[null,"2.12"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(140,59,'Gears',11,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,11],"TransmissionId":[null,15],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.38],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.38"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(141,59,'Gears',12,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',NULL,'Insert','{"Id":[null,12],"TransmissionId":[null,15],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(142,60,'Components',16,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,16],"Donor":[null,"Tolland yard, from a late saloon"],"Kind":[null,"transmission"],"Name":[null,"Delmere D5 five-speed"],"Notes":[null,""],"SerialNumber":[null,"D5-00214"],"Shelf":[null,""],"Uid":[null,"01A22102-16FA-720B-B33A-E9CDB978D5EA"],"Version":[null,0]}');
INSERT INTO Changes VALUES(143,60,'Specs',14,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,14],"ComponentId":[null,16],"NumberSi":[null,260],"NumberSource":[null,"MakersData"],"NumberText":[null,"260 Nm"],"NumberUnit":[null,"N·m"],"Spec":[null,"ClutchRating"]}');
INSERT INTO Changes VALUES(144,60,'Specs',15,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,15],"ComponentId":[null,16],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(145,60,'Traits',40,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,40],"ComponentId":[null,16],"Trait":[null,"SpeedometerFeed"],"Text":[null,"Cable"]}');
INSERT INTO Changes VALUES(146,60,'Traits',41,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,41],"ComponentId":[null,16],"Trait":[null,"BellHousing"],"Text":[null,"Corvane four"]}');
INSERT INTO Changes VALUES(147,60,'Traits',42,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,42],"ComponentId":[null,16],"Trait":[null,"InputSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(148,60,'Traits',43,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,43],"ComponentId":[null,16],"Trait":[null,"DiscSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(149,60,'Traits',44,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,44],"ComponentId":[null,16],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(150,60,'Traits',45,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,45],"ComponentId":[null,16],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(151,60,'Traits',46,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,46],"ComponentId":[null,16],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(152,60,'Gears',13,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,13],"TransmissionId":[null,16],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,3.32],"RatioSource":[null,"MakersData"],"RatioText":[null,"3.32"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(153,60,'Gears',14,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,14],"TransmissionId":[null,16],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2.05],"RatioSource":[null,"MakersData"],"RatioText":[null,"2.05"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(154,60,'Gears',15,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,15],"TransmissionId":[null,16],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.38],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.38"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(155,60,'Gears',16,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,16],"TransmissionId":[null,16],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(156,60,'Gears',17,'01A22102-16FA-720B-B33A-E9CDB978D5EA',NULL,'Insert','{"Id":[null,17],"TransmissionId":[null,16],"Ordinal":[null,5],"Name":[null,"5"],"RatioSi":[null,0.81],"RatioSource":[null,"MakersData"],"RatioText":[null,"0.81"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(157,61,'Components',17,'01A22102-16FE-7D58-A542-9A2E5FC1F535',NULL,'Insert','{"Id":[null,17],"Donor":[null,"its own"],"Kind":[null,"axle"],"Name":[null,"Harrow axle 41/11"],"Notes":[null,""],"Pinion":[null,11],"Ring":[null,41],"SerialNumber":[null,"HR-5-2218"],"Shelf":[null,""],"StatedRatioSi":[null,3.73],"StatedRatioSource":[null,"Tag"],"StatedRatioText":[null,"3.73"],"StatedRatioUnit":[null,""],"Uid":[null,"01A22102-16FE-7D58-A542-9A2E5FC1F535"],"Version":[null,0]}');
INSERT INTO Changes VALUES(158,61,'Traits',47,'01A22102-16FE-7D58-A542-9A2E5FC1F535',NULL,'Insert','{"Id":[null,47],"ComponentId":[null,17],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(159,62,'Components',18,'01A22102-1706-7407-8A9C-543625C5F0EA',NULL,'Insert','{"Id":[null,18],"Construction":[null,"Radial"],"Donor":[null,"came with it"],"Kind":[null,"wheels"],"Name":[null,"Norwell 185/60R15 on alloys"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,"loft"],"SizeText":[null,"185/60R15 84H"],"StatedCircumferenceSi":[null,1.84],"StatedCircumferenceSource":[null,"MakersData"],"StatedCircumferenceText":[null,"1.84 m"],"StatedCircumferenceUnit":[null,"m"],"Uid":[null,"01A22102-1706-7407-8A9C-543625C5F0EA"],"Version":[null,0]}');
INSERT INTO Changes VALUES(160,63,'Components',19,'01A22102-170A-7EB1-A70B-5316CDE58D09',NULL,'Insert','{"Id":[null,19],"Donor":[null,"its own"],"DriveTeeth":[null,6],"DrivenTeeth":[null,22],"Kind":[null,"speedometer"],"Name":[null,"Tansy''s own speedometer"],"Notes":[null,""],"Per":[null,"Miles"],"SerialNumber":[null,""],"Shelf":[null,""],"Uid":[null,"01A22102-170A-7EB1-A70B-5316CDE58D09"],"Version":[null,0]}');
INSERT INTO Changes VALUES(161,63,'Specs',16,'01A22102-170A-7EB1-A70B-5316CDE58D09',NULL,'Insert','{"Id":[null,16],"ComponentId":[null,19],"NumberSi":[null,870],"NumberSource":[null,"Tag"],"NumberText":[null,"870"],"NumberUnit":[null,""],"Spec":[null,"TurnsWanted"]}');
INSERT INTO Changes VALUES(162,63,'Traits',48,'01A22102-170A-7EB1-A70B-5316CDE58D09',NULL,'Insert','{"Id":[null,48],"ComponentId":[null,19],"Trait":[null,"SpeedometerFeed"],"Text":[null,"Cable"]}');
INSERT INTO Changes VALUES(163,64,'Components',20,'01A22102-1716-7EB2-964B-058A0A6864FB',NULL,'Insert','{"Id":[null,20],"Construction":[null,"Radial"],"Donor":[null,"bought new"],"Kind":[null,"wheels"],"Name":[null,"Norwell 195/65R15 on alloys"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"195/65R15 91H"],"Uid":[null,"01A22102-1716-7EB2-964B-058A0A6864FB"],"Version":[null,0],"WornSi":[null,0.002],"WornSource":[null,"Measured"],"WornText":[null,"2 mm"],"WornUnit":[null,"mm"]}');
INSERT INTO Changes VALUES(164,65,'Fitments',14,'01A22102-171D-78D6-82D2-EFE980D1074D',3,'Insert','{"Id":[null,14],"ComponentId":[null,14],"FromDate":[null,"2024-04-13"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"back in after a head gasket"],"ReasonOff":[null,""],"Uid":[null,"01A22102-171D-78D6-82D2-EFE980D1074D"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(165,66,'Fitments',15,'01A22102-172F-756B-A018-5958799A47A3',3,'Insert','{"Id":[null,15],"ComponentId":[null,15],"FromDate":[null,"2024-04-13"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"its own, for now"],"ReasonOff":[null,""],"Uid":[null,"01A22102-172F-756B-A018-5958799A47A3"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(166,67,'Fitments',16,'01A22102-1743-7FE5-BC3D-BE522BBE5F0A',3,'Insert','{"Id":[null,16],"ComponentId":[null,17],"FromDate":[null,"2024-04-13"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,3],"Position":[null,"RearAxle"],"Reason":[null,"cover off, teeth counted, new gasket"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1743-7FE5-BC3D-BE522BBE5F0A"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(167,68,'Fitments',17,'01A22102-1757-7CFD-BDF1-36D7D718CF78',3,'Insert','{"Id":[null,17],"ComponentId":[null,18],"FromDate":[null,"2024-04-13"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,4],"Position":[null,"Tyres"],"Reason":[null,"as it came"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1757-7CFD-BDF1-36D7D718CF78"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(168,69,'Fitments',18,'01A22102-1783-7B13-A04F-1E35BFF01662',3,'Insert','{"Id":[null,18],"ComponentId":[null,19],"FromDate":[null,"2024-04-13"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,5],"Position":[null,"Speedometer"],"Reason":[null,"its own"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1783-7B13-A04F-1E35BFF01662"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(169,70,'Fitments',17,'01A22102-1757-7CFD-BDF1-36D7D718CF78',3,'Update','{"ReasonOff":["","legal tread"],"ToDate":[null,"2024-04-20"],"ToOdometerMetres":[null,148249550.592],"ToOdometerText":[null,"92 118"],"ToOdometerUnit":[null,"mi"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(170,70,'Fitments',19,'01A22102-17A5-71F2-8A49-37C6721522C6',3,'Insert','{"Id":[null,19],"ComponentId":[null,20],"FromDate":[null,"2024-04-20"],"FromOdometerMetres":[null,148249550.592],"FromOdometerText":[null,"92 118"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Tyres"],"Reason":[null,"legal tread"],"ReasonOff":[null,""],"Uid":[null,"01A22102-17A5-71F2-8A49-37C6721522C6"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(171,71,'Sessions',6,'01A22102-17B6-7B33-AB28-7D6AC5700513',3,'Insert','{"Id":[null,6],"Align":[null,"0.01"],"ComponentId":[null,20],"Conditions":[null,"level car park, half a tank, driver aboard"],"Construction":[null,"Radial"],"Date":[null,"2024-05-04"],"Helper":[null,"Dorrit Ames"],"Loaded":[null,1],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"2.2 bar"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-17B6-7B33-AB28-7D6AC5700513"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(172,71,'Readings',14,'01A22102-17B6-7B33-AB28-7D6AC5700513',3,'Insert','{"Id":[null,14],"SessionId":[null,6],"Ordinal":[null,1],"Text":[null,"1:1936mm"]}');
INSERT INTO Changes VALUES(173,71,'Readings',15,'01A22102-17B6-7B33-AB28-7D6AC5700513',3,'Insert','{"Id":[null,15],"SessionId":[null,6],"Ordinal":[null,2],"Text":[null,"3:5807 mm"]}');
INSERT INTO Changes VALUES(174,71,'Readings',16,'01A22102-17B6-7B33-AB28-7D6AC5700513',3,'Insert','{"Id":[null,16],"SessionId":[null,6],"Ordinal":[null,3],"Text":[null,"5:9.68 m"]}');
INSERT INTO Changes VALUES(175,72,'Sessions',7,'01A22102-17BA-743D-9A1D-80E3151078A3',NULL,'Insert','{"Id":[null,7],"Align":[null,"0.02"],"ComponentId":[null,16],"Conditions":[null,"on the bench, paper disc on the input"],"Date":[null,"2024-07-20"],"Gear":[null,"5"],"Helper":[null,"Piet Arlow"],"Method":[null,"gear count"],"Notes":[null,""],"ReadTo":[null,"0.1"],"Uid":[null,"01A22102-17BA-743D-9A1D-80E3151078A3"],"Version":[null,0]}');
INSERT INTO Changes VALUES(176,72,'Readings',17,'01A22102-17BA-743D-9A1D-80E3151078A3',NULL,'Insert','{"Id":[null,17],"SessionId":[null,7],"Ordinal":[null,1],"Text":[null,"10:8.1"]}');
INSERT INTO Changes VALUES(177,72,'Readings',18,'01A22102-17BA-743D-9A1D-80E3151078A3',NULL,'Insert','{"Id":[null,18],"SessionId":[null,7],"Ordinal":[null,2],"Text":[null,"20:16.2"]}');
INSERT INTO Changes VALUES(178,73,'Fitments',15,'01A22102-172F-756B-A018-5958799A47A3',3,'Update','{"ReasonOff":["","own box jumps out of second, and 70 mph is tiring"],"ToDate":[null,"2024-07-27"],"ToOdometerMetres":[null,152678465.28],"ToOdometerText":[null,"94 870"],"ToOdometerUnit":[null,"mi"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(179,73,'Fitments',20,'01A22102-17CC-7485-B911-AD07316D1D56',3,'Insert','{"Id":[null,20],"ComponentId":[null,16],"FromDate":[null,"2024-07-27"],"FromOdometerMetres":[null,152678465.28],"FromOdometerText":[null,"94 870"],"FromOdometerUnit":[null,"mi"],"FromOrder":[null,1],"Position":[null,"Transmission"],"Reason":[null,"own box jumps out of second, and 70 mph is tiring"],"ReasonOff":[null,""],"Uid":[null,"01A22102-17CC-7485-B911-AD07316D1D56"],"VehicleId":[null,3],"Version":[null,0]}');
INSERT INTO Changes VALUES(180,74,'Jobs',3,'01A22102-17DE-70E0-A6AC-9E894D36AB6C',3,'Insert','{"Id":[null,3],"VehicleId":[null,3],"Title":[null,"five-speed instead of the four-speed"],"Description":[null,""],"State":[null,"Done"],"BeforeHandover":[null,0],"BlockedBy":[null,""],"Uid":[null,"01A22102-17DE-70E0-A6AC-9E894D36AB6C"],"Version":[null,0]}');
INSERT INTO Changes VALUES(181,75,'WorkEntries',2,'01A22102-17E2-76C7-A9FD-C99903F9ED47',3,'Insert','{"Id":[null,2],"JobId":[null,3],"Date":[null,"2024-07-20"],"Hours":[null,"2 h 30 min"],"Minutes":[null,150],"Who":[null,"Piet Arlow"],"What":[null,"on the bench: top gear counted, new input seal"],"Uid":[null,"01A22102-17E2-76C7-A9FD-C99903F9ED47"],"Version":[null,0]}');
INSERT INTO Changes VALUES(182,76,'WorkEntries',3,'01A22102-17E6-7EB2-B77C-880095588566',3,'Insert','{"Id":[null,3],"JobId":[null,3],"Date":[null,"2024-07-27"],"Hours":[null,"7 h"],"Minutes":[null,420],"Who":[null,""],"What":[null,"four-speed out, five-speed in, tunnel plate cut back"],"Uid":[null,"01A22102-17E6-7EB2-B77C-880095588566"],"Version":[null,0]}');
INSERT INTO Changes VALUES(183,77,'Attachments',1,'01A22102-1802-72A0-860E-C93FD1E496FA',NULL,'Insert','{"Id":[null,1],"About":[null,"Vehicle"],"AboutUid":[null,"01A22102-16C3-7BF3-92EE-6A94334BEA5E"],"Caption":[null,"Tolland yard, gearbox"],"FileName":[null,"receipt-five-speed.jpg"],"Length":[null,16952],"MediaType":[null,"image/jpeg"],"Sha256":[null,"b8077dc62af3595ff551935f89a1581b8be5598e26f11b0051e4fd86b203827a"],"TakenEarliest":[null,"2024-07-06"],"TakenLatest":[null,"2024-07-06"],"TakenText":[null,"6 July 2024"],"Uid":[null,"01A22102-1802-72A0-860E-C93FD1E496FA"],"Version":[null,0],"What":[null,"Receipt"]}');
INSERT INTO Changes VALUES(184,78,'Costs',3,'01A22102-1816-727B-811D-84726339A36F',3,'Insert','{"Id":[null,3],"VehicleId":[null,3],"JobId":[null,3],"Date":[null,"2024-07-06"],"What":[null,"five-speed gearbox"],"ComponentId":[null,16],"ReceiptId":[null,1],"AmountCurrency":[null,"EUR"],"AmountMinor":[null,31000],"Uid":[null,"01A22102-1816-727B-811D-84726339A36F"],"Version":[null,0]}');
INSERT INTO Changes VALUES(185,79,'Costs',4,'01A22102-181E-7348-8382-809306761C86',3,'Insert','{"Id":[null,4],"VehicleId":[null,3],"JobId":[null,3],"Date":[null,"2024-07-19"],"What":[null,"input seal, oil"],"AmountCurrency":[null,"EUR"],"AmountMinor":[null,4150],"Uid":[null,"01A22102-181E-7348-8382-809306761C86"],"Version":[null,0]}');
INSERT INTO Changes VALUES(186,80,'RoadTests',2,'01A22102-1822-70DA-A302-BDB807870A90',3,'Insert','{"Id":[null,2],"VehicleId":[null,3],"Date":[null,"2024-08-03"],"Gear":[null,"5"],"Temperatures":[null,""],"Vibration":[null,""],"Noises":[null,"quiet; a tick from the speedometer cable"],"Defects":[null,""],"Fix":[null,""],"EngineSpeedSi":[null,48.333333333333336],"EngineSpeedSource":[null,"Measured"],"EngineSpeedText":[null,"2900 rpm"],"EngineSpeedUnit":[null,"rev/min"],"SpeedSi":[null,31.2928],"SpeedSource":[null,"Measured"],"SpeedText":[null,"70 mph"],"SpeedUnit":[null,"mph"],"Uid":[null,"01A22102-1822-70DA-A302-BDB807870A90"],"Version":[null,0]}');
INSERT INTO Changes VALUES(187,81,'Attachments',2,'01A22102-1832-7A75-8BA0-4BF233883DD1',NULL,'Insert','{"Id":[null,2],"About":[null,"Vehicle"],"AboutUid":[null,"01A22102-16C3-7BF3-92EE-6A94334BEA5E"],"Caption":[null,"back on the road"],"FileName":[null,"tansy.jpg"],"Length":[null,30669],"MediaType":[null,"image/jpeg"],"Sha256":[null,"f27603f2d89ea799914aed112e52fcabed9856a2d2e21b16dbeec9060d992b23"],"TakenEarliest":[null,"2024-08-01"],"TakenLatest":[null,"2024-08-31"],"TakenText":[null,"August 2024"],"Uid":[null,"01A22102-1832-7A75-8BA0-4BF233883DD1"],"Version":[null,0],"What":[null,"Photo"]}');
INSERT INTO Changes VALUES(188,82,'Attachments',3,'01A22102-1848-722C-B243-9DEFDD2ED06F',NULL,'Insert','{"Id":[null,3],"About":[null,"Job"],"AboutUid":[null,"01A22102-17DE-70E0-A6AC-9E894D36AB6C"],"Caption":[null,"before: on stands, in primer, its own box still in"],"FileName":[null,"tansy-on-stands.jpg"],"Length":[null,26072],"MediaType":[null,"image/jpeg"],"Sha256":[null,"05262e5b0c89b2a8bbc88cd791c3f223a4d90f13b539b895605e9d9788d2cca6"],"TakenEarliest":[null,"2024-03-01"],"TakenLatest":[null,"2024-05-31"],"TakenText":[null,"spring 2024"],"Uid":[null,"01A22102-1848-722C-B243-9DEFDD2ED06F"],"Version":[null,0],"What":[null,"Photo"]}');
INSERT INTO Changes VALUES(189,83,'Vehicles',4,'01A22102-185A-7BCD-B471-23EFA165D2C4',4,'Insert','{"Id":[null,4],"ChassisNumber":[null,"QL 70 0093"],"DrivesInFront":[null,0],"Name":[null,"Quillon"],"NameKey":[null,"QUILLON"],"Notes":[null,"Fastback coupe, shell painted, going together."],"OdometerUnit":[null,"Kilometres"],"Owner":[null,"Bastian Orme"],"Registration":[null,""],"State":[null,"InBuild"],"Uid":[null,"01A22102-185A-7BCD-B471-23EFA165D2C4"],"Version":[null,0],"Description":[null,"fastback coupe of 1970"]}');
INSERT INTO Changes VALUES(190,84,'Goals',4,'01A22102-1862-7E25-9D4A-2B01EA8B946B',4,'Insert','{"Id":[null,4],"EngineSpeed":[null,"3000 rpm"],"EngineSpeedSi":[null,50],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"100 km/h"],"SpeedSi":[null,27.77777777777778],"Tolerance":[null,"150 rpm"],"Uid":[null,"01A22102-1862-7E25-9D4A-2B01EA8B946B"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(191,85,'Components',21,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,21],"Donor":[null,"Tolland yard"],"IdleSi":[null,11.666666666666666],"IdleSource":[null,"OwnersWord"],"IdleText":[null,"700 rpm"],"IdleUnit":[null,"rev/min"],"Kind":[null,"engine"],"Name":[null,"Corvane 2.7 six"],"Notes":[null,""],"RedlineSi":[null,100],"RedlineSource":[null,"MakersData"],"RedlineText":[null,"6000 rpm"],"RedlineUnit":[null,"rev/min"],"SerialNumber":[null,"CV27-40032"],"Shelf":[null,""],"Uid":[null,"01A22102-1866-75EE-B60A-F733308DBBD6"],"Version":[null,0]}');
INSERT INTO Changes VALUES(192,85,'Specs',17,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,17],"ComponentId":[null,21],"NumberSi":[null,0.015050000000000001],"NumberSource":[null,"Measured"],"NumberText":[null,"15.05 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"PilotBore"]}');
INSERT INTO Changes VALUES(193,85,'Traits',49,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,49],"ComponentId":[null,21],"Trait":[null,"BellHousing"],"Text":[null,"Corvane six"]}');
INSERT INTO Changes VALUES(194,85,'Traits',50,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,50],"ComponentId":[null,21],"Trait":[null,"Plate"],"Text":[null,"Flywheel"]}');
INSERT INTO Changes VALUES(195,85,'Traits',51,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,51],"ComponentId":[null,21],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(196,85,'Traits',52,'01A22102-1866-75EE-B60A-F733308DBBD6',NULL,'Insert','{"Id":[null,52],"ComponentId":[null,21],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(197,86,'Components',22,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,22],"Donor":[null,"Bastian''s shelf"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4 close-ratio"],"Notes":[null,"The clutch disc came with the engine."],"SerialNumber":[null,"D4C-511"],"Shelf":[null,""],"Uid":[null,"01A22102-186A-773F-A5B7-9076A9C191A3"],"Version":[null,0]}');
INSERT INTO Changes VALUES(198,86,'Specs',18,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,18],"ComponentId":[null,22],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(199,86,'Traits',53,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,53],"ComponentId":[null,22],"Trait":[null,"BellHousing"],"Text":[null,"Corvane six"]}');
INSERT INTO Changes VALUES(200,86,'Traits',54,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,54],"ComponentId":[null,22],"Trait":[null,"InputSpline"],"Text":[null,"26 × 1 in"]}');
INSERT INTO Changes VALUES(201,86,'Traits',55,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,55],"ComponentId":[null,22],"Trait":[null,"DiscSpline"],"Text":[null,"10 × 1 1/8 in"]}');
INSERT INTO Changes VALUES(202,86,'Traits',56,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,56],"ComponentId":[null,22],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(203,86,'Traits',57,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,57],"ComponentId":[null,22],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(204,86,'Traits',58,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,58],"ComponentId":[null,22],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(205,86,'Gears',18,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,18],"TransmissionId":[null,22],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,2.98],"RatioSource":[null,"Tag"],"RatioText":[null,"2.98"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(206,86,'Gears',19,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,19],"TransmissionId":[null,22],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,1.94],"RatioSource":[null,"Tag"],"RatioText":[null,"1.94"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(207,86,'Gears',20,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,20],"TransmissionId":[null,22],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.34],"RatioSource":[null,"Tag"],"RatioText":[null,"1.34"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(208,86,'Gears',21,'01A22102-186A-773F-A5B7-9076A9C191A3',NULL,'Insert','{"Id":[null,21],"TransmissionId":[null,22],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"Tag"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(209,87,'Components',23,'01A22102-186E-70DF-BEBB-22CB743C6F0C',NULL,'Insert','{"Id":[null,23],"Donor":[null,"unknown, bought with the shell"],"Kind":[null,"axle"],"Name":[null,"Harrow narrow axle"],"Notes":[null,""],"SerialNumber":[null,"HR-N-0815"],"Shelf":[null,""],"Uid":[null,"01A22102-186E-70DF-BEBB-22CB743C6F0C"],"Version":[null,0]}');
INSERT INTO Changes VALUES(210,87,'Traits',59,'01A22102-186E-70DF-BEBB-22CB743C6F0C',NULL,'Insert','{"Id":[null,59],"ComponentId":[null,23],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(211,88,'Components',24,'01A22102-1872-7C55-8372-F6C850C0F49A',NULL,'Insert','{"Id":[null,24],"Construction":[null,"Radial"],"Donor":[null,"bought new"],"Kind":[null,"wheels"],"Name":[null,"Norwell 185/70R14 on steel"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"185/70R14 88T"],"Uid":[null,"01A22102-1872-7C55-8372-F6C850C0F49A"],"Version":[null,0]}');
INSERT INTO Changes VALUES(212,89,'Fitments',21,'01A22102-1879-7628-9C0B-D5AEAD64FEF0',4,'Insert','{"Id":[null,21],"ComponentId":[null,21],"FromDate":[null,"2024-09-14"],"FromOdometerMetres":[null,0],"FromOdometerText":[null,"0"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"odometer set to nought with the new dial"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1879-7628-9C0B-D5AEAD64FEF0"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(213,90,'Fitments',22,'01A22102-1883-7E72-B796-8F1DE9977D73',4,'Insert','{"Id":[null,22],"ComponentId":[null,22],"FromDate":[null,"2024-09-14"],"FromOdometerMetres":[null,0],"FromOdometerText":[null,"0"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"in with the engine"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1883-7E72-B796-8F1DE9977D73"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(214,91,'Fitments',23,'01A22102-1893-7D3B-A8E2-0E9667169CA3',4,'Insert','{"Id":[null,23],"ComponentId":[null,23],"FromDate":[null,"2024-11-02"],"FromOdometerMetres":[null,0],"FromOdometerText":[null,"0"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"it came with the shell and bolts straight up"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1893-7D3B-A8E2-0E9667169CA3"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(215,92,'Fitments',24,'01A22102-18A7-7F36-8DCA-32D7E940903B',4,'Insert','{"Id":[null,24],"ComponentId":[null,24],"FromDate":[null,"2024-11-09"],"FromOdometerMetres":[null,0],"FromOdometerText":[null,"0"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Tyres"],"Reason":[null,"onto its wheels at last"],"ReasonOff":[null,""],"Uid":[null,"01A22102-18A7-7F36-8DCA-32D7E940903B"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(216,93,'Sessions',8,'01A22102-18EB-7937-91F2-7D511CF87094',4,'Insert','{"Id":[null,8],"Align":[null,"0.02"],"ComponentId":[null,23],"Conditions":[null,"alone, three turns before the light went"],"Date":[null,"2024-11-09"],"Helper":[null,""],"Hub":[null,""],"Method":[null,"turn count"],"Notes":[null,""],"ReadTo":[null,"0.25"],"Uid":[null,"01A22102-18EB-7937-91F2-7D511CF87094"],"VehicleId":[null,4],"Version":[null,0],"Wheels":[null,"OneHeld"]}');
INSERT INTO Changes VALUES(217,93,'Readings',19,'01A22102-18EB-7937-91F2-7D511CF87094',4,'Insert','{"Id":[null,19],"SessionId":[null,8],"Ordinal":[null,1],"Text":[null,"3:5 1/4"]}');
INSERT INTO Changes VALUES(218,94,'Sessions',9,'01A22102-18EE-79D3-87C1-970F335C34FD',4,'Insert','{"Id":[null,9],"Align":[null,"0.01"],"ComponentId":[null,24],"Conditions":[null,"shed floor, shell without glass yet"],"Construction":[null,"Radial"],"Date":[null,"2024-11-16"],"Helper":[null,"Bastian Orme"],"Loaded":[null,1],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"2.0 bar"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-18EE-79D3-87C1-970F335C34FD"],"VehicleId":[null,4],"Version":[null,0]}');
INSERT INTO Changes VALUES(219,94,'Readings',20,'01A22102-18EE-79D3-87C1-970F335C34FD',4,'Insert','{"Id":[null,20],"SessionId":[null,9],"Ordinal":[null,1],"Text":[null,"1:1876mm"]}');
INSERT INTO Changes VALUES(220,94,'Readings',21,'01A22102-18EE-79D3-87C1-970F335C34FD',4,'Insert','{"Id":[null,21],"SessionId":[null,9],"Ordinal":[null,2],"Text":[null,"2:3751mm"]}');
INSERT INTO Changes VALUES(221,94,'Readings',22,'01A22102-18EE-79D3-87C1-970F335C34FD',4,'Insert','{"Id":[null,22],"SessionId":[null,9],"Ordinal":[null,3],"Text":[null,"4:7.503 m"]}');
INSERT INTO Changes VALUES(222,95,'Vehicles',5,'01A22102-18FB-72D8-B3DD-8BEB48121118',5,'Insert','{"Id":[null,5],"ChassisNumber":[null,"HD4-1177-L"],"DrivesInFront":[null,0],"Name":[null,"Haldor"],"NameKey":[null,"HALDOR"],"Notes":[null,"Long-wheelbase 4×4, carries the mowers."],"OdometerUnit":[null,"Kilometres"],"Owner":[null,"Ilse Marrick"],"Registration":[null,"IM 1177"],"State":[null,"InBuild"],"Uid":[null,"01A22102-18FB-72D8-B3DD-8BEB48121118"],"Version":[null,0],"Description":[null,"long-wheelbase 4×4 of 1977"]}');
INSERT INTO Changes VALUES(223,96,'Goals',5,'01A22102-1906-7770-8CF8-4A27281167F6',5,'Insert','{"Id":[null,5],"EngineSpeed":[null,"2700 rpm"],"EngineSpeedSi":[null,45],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"90 km/h"],"SpeedSi":[null,25],"Tolerance":[null,"at most"],"Uid":[null,"01A22102-1906-7770-8CF8-4A27281167F6"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(224,97,'Components',25,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,25],"Donor":[null,"ground-power set, Ferrow"],"IdleSi":[null,10],"IdleSource":[null,"Measured"],"IdleText":[null,"600 rpm"],"IdleUnit":[null,"rev/min"],"Kind":[null,"engine"],"Name":[null,"Corvane 3.9 diesel"],"Notes":[null,""],"RedlineSi":[null,60],"RedlineSource":[null,"MakersData"],"RedlineText":[null,"3600 rpm"],"RedlineUnit":[null,"rev/min"],"SerialNumber":[null,"CVD39-2260"],"Shelf":[null,""],"Uid":[null,"01A22102-1911-705A-953A-97C7839C32B9"],"Version":[null,0]}');
INSERT INTO Changes VALUES(225,97,'Specs',19,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,19],"ComponentId":[null,25],"NumberSi":[null,0.015050000000000001],"NumberSource":[null,"Measured"],"NumberText":[null,"15.05 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"PilotBore"]}');
INSERT INTO Changes VALUES(226,97,'Traits',60,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,60],"ComponentId":[null,25],"Trait":[null,"BellHousing"],"Text":[null,"Corvane industrial"]}');
INSERT INTO Changes VALUES(227,97,'Traits',61,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,61],"ComponentId":[null,25],"Trait":[null,"Plate"],"Text":[null,"Flywheel"]}');
INSERT INTO Changes VALUES(228,97,'Traits',62,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,62],"ComponentId":[null,25],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(229,97,'Traits',63,'01A22102-1911-705A-953A-97C7839C32B9',NULL,'Insert','{"Id":[null,63],"ComponentId":[null,25],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(230,98,'Components',26,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,26],"Donor":[null,"its own"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4 heavy"],"Notes":[null,""],"SerialNumber":[null,"D4H-902"],"Shelf":[null,""],"Uid":[null,"01A22102-191E-774B-AA5E-051743CA114B"],"Version":[null,0]}');
INSERT INTO Changes VALUES(231,98,'Specs',20,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,20],"ComponentId":[null,26],"NumberSi":[null,0.015],"NumberSource":[null,"Measured"],"NumberText":[null,"15.00 mm"],"NumberUnit":[null,"mm"],"Spec":[null,"Spigot"]}');
INSERT INTO Changes VALUES(232,98,'Traits',64,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,64],"ComponentId":[null,26],"Trait":[null,"BellHousing"],"Text":[null,"Corvane industrial"]}');
INSERT INTO Changes VALUES(233,98,'Traits',65,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,65],"ComponentId":[null,26],"Trait":[null,"InputSpline"],"Text":[null,"10 × 1 1/8 in"]}');
INSERT INTO Changes VALUES(234,98,'Traits',66,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,66],"ComponentId":[null,26],"Trait":[null,"DiscSpline"],"Text":[null,"10 × 1 1/8 in"]}');
INSERT INTO Changes VALUES(235,98,'Traits',67,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,67],"ComponentId":[null,26],"Trait":[null,"Starter"],"Text":[null,"Right"]}');
INSERT INTO Changes VALUES(236,98,'Traits',68,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,68],"ComponentId":[null,26],"Trait":[null,"Turns"],"Text":[null,"Clockwise"]}');
INSERT INTO Changes VALUES(237,98,'Traits',69,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,69],"ComponentId":[null,26],"Trait":[null,"ShiftLinkage"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(238,98,'Gears',22,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,22],"TransmissionId":[null,26],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,4.05],"RatioSource":[null,"MakersData"],"RatioText":[null,"4.05"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(239,98,'Gears',23,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,23],"TransmissionId":[null,26],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2.22],"RatioSource":[null,"MakersData"],"RatioText":[null,"2.22"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(240,98,'Gears',24,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,24],"TransmissionId":[null,26],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.42],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.42"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(241,98,'Gears',25,'01A22102-191E-774B-AA5E-051743CA114B',NULL,'Insert','{"Id":[null,25],"TransmissionId":[null,26],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"MakersData"],"RatioText":[null,"1.00"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(242,99,'Components',27,'01A22102-1922-7A7E-ADD5-A2A7B1619919',NULL,'Insert','{"Id":[null,27],"Donor":[null,"its own"],"FrontDrive":[null,"Declutch"],"HighSi":[null,1],"HighSource":[null,"MakersData"],"HighText":[null,"1.00"],"HighUnit":[null,""],"Kind":[null,"transfer case"],"LowSi":[null,2.32],"LowSource":[null,"MakersData"],"LowText":[null,"2.32"],"LowUnit":[null,""],"Name":[null,"Marlow M2 transfer case"],"Notes":[null,""],"SerialNumber":[null,"M2-4451"],"Shelf":[null,""],"Uid":[null,"01A22102-1922-7A7E-ADD5-A2A7B1619919"],"Version":[null,0]}');
INSERT INTO Changes VALUES(243,99,'Traits',70,'01A22102-1922-7A7E-ADD5-A2A7B1619919',NULL,'Insert','{"Id":[null,70],"ComponentId":[null,27],"Trait":[null,"ParkingBrake"],"Text":[null,"Fitted"]}');
INSERT INTO Changes VALUES(244,100,'Components',28,'01A22102-1932-7614-8E1B-3A03D12E7F65',NULL,'Insert','{"Id":[null,28],"Donor":[null,"its own"],"Kind":[null,"axle"],"Name":[null,"Harrow heavy rear 4.56"],"Notes":[null,""],"Pinion":[null,9],"Ring":[null,41],"SerialNumber":[null,"HR-H-120"],"Shelf":[null,"rack C"],"Uid":[null,"01A22102-1932-7614-8E1B-3A03D12E7F65"],"Version":[null,0]}');
INSERT INTO Changes VALUES(245,101,'Components',29,'01A22102-193A-73F9-B547-464603732A98',NULL,'Insert','{"Id":[null,29],"Donor":[null,"its own"],"Kind":[null,"axle"],"Name":[null,"Harrow heavy front 4.56"],"Notes":[null,""],"Pinion":[null,9],"Ring":[null,41],"SerialNumber":[null,"HR-HF-121"],"Shelf":[null,"rack C"],"Uid":[null,"01A22102-193A-73F9-B547-464603732A98"],"Version":[null,0]}');
INSERT INTO Changes VALUES(246,102,'Components',30,'01A22102-1942-7C46-901F-636FFED1BB0A',NULL,'Insert','{"Id":[null,30],"Donor":[null,"Tolland yard, matched pair"],"Kind":[null,"axle"],"Name":[null,"Harrow heavy rear 4.10"],"Notes":[null,""],"Pinion":[null,10],"Ring":[null,41],"SerialNumber":[null,"HR-H-388"],"Shelf":[null,""],"Uid":[null,"01A22102-1942-7C46-901F-636FFED1BB0A"],"Version":[null,0]}');
INSERT INTO Changes VALUES(247,103,'Components',31,'01A22102-1946-751B-9599-751F3D7F7077',NULL,'Insert','{"Id":[null,31],"Donor":[null,"Tolland yard, matched pair"],"Kind":[null,"axle"],"Name":[null,"Harrow heavy front 4.10"],"Notes":[null,""],"SerialNumber":[null,"HR-HF-389"],"Shelf":[null,""],"StatedRatioSi":[null,4.1],"StatedRatioSource":[null,"Tag"],"StatedRatioText":[null,"4.10"],"StatedRatioUnit":[null,""],"Uid":[null,"01A22102-1946-751B-9599-751F3D7F7077"],"Version":[null,0]}');
INSERT INTO Changes VALUES(248,104,'Components',32,'01A22102-194A-7E52-A9B2-48D4FBF61D88',NULL,'Insert','{"Id":[null,32],"Construction":[null,"Radial"],"Donor":[null,"bought new"],"Kind":[null,"wheels"],"Name":[null,"Tarn LT235/85R16 on steel"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"SizeText":[null,"LT235/85R16 120/116Q"],"Uid":[null,"01A22102-194A-7E52-A9B2-48D4FBF61D88"],"Version":[null,0]}');
INSERT INTO Changes VALUES(249,105,'Fitments',25,'01A22102-1955-7267-84FE-5AF46867803D',5,'Insert','{"Id":[null,25],"ComponentId":[null,25],"FromDate":[null,"2024-04-27"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"the petrol engine was worn out"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1955-7267-84FE-5AF46867803D"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(250,106,'Fitments',26,'01A22102-1967-72A6-B8BF-9D5BC03F79B5',5,'Insert','{"Id":[null,26],"ComponentId":[null,26],"FromDate":[null,"2024-04-27"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"new bearings"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1967-72A6-B8BF-9D5BC03F79B5"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(251,107,'Fitments',27,'01A22102-19A8-7316-80C7-27310758972C',5,'Insert','{"Id":[null,27],"ComponentId":[null,27],"FromDate":[null,"2024-04-27"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,3],"Position":[null,"TransferCase"],"Reason":[null,"new seals"],"ReasonOff":[null,""],"Uid":[null,"01A22102-19A8-7316-80C7-27310758972C"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(252,108,'Fitments',28,'01A22102-19C7-7126-87AE-7D527692C3B7',5,'Insert','{"Id":[null,28],"ComponentId":[null,28],"FromDate":[null,"2024-05-11"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"its own"],"ReasonOff":[null,""],"Uid":[null,"01A22102-19C7-7126-87AE-7D527692C3B7"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(253,109,'Fitments',29,'01A22102-19D3-79B5-9976-F7D22A40C3D0',5,'Insert','{"Id":[null,29],"ComponentId":[null,29],"FromDate":[null,"2024-05-11"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,2],"Position":[null,"FrontAxle"],"Reason":[null,"its own"],"ReasonOff":[null,""],"Uid":[null,"01A22102-19D3-79B5-9976-F7D22A40C3D0"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(254,110,'Fitments',30,'01A22102-19E3-7B7C-8B61-B3F89D680DFB',5,'Insert','{"Id":[null,30],"ComponentId":[null,32],"FromDate":[null,"2024-05-11"],"FromOdometerMetres":[null,140220000],"FromOdometerText":[null,"140 220"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,3],"Position":[null,"Tyres"],"Reason":[null,"mud pattern, to clear the arches"],"ReasonOff":[null,""],"Uid":[null,"01A22102-19E3-7B7C-8B61-B3F89D680DFB"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(255,111,'Sessions',10,'01A22102-19EE-7B5A-8D0E-087A61FE6C48',NULL,'Insert','{"Id":[null,10],"Align":[null,"0.01"],"ComponentId":[null,32],"Conditions":[null,"one loose wheel along the shed floor"],"Construction":[null,"Radial"],"Date":[null,"2024-05-11"],"Helper":[null,""],"Loaded":[null,0],"Method":[null,"roll-out"],"Notes":[null,""],"Pressure":[null,"3.5 bar"],"Tape":[null,"2 mm"],"Uid":[null,"01A22102-19EE-7B5A-8D0E-087A61FE6C48"],"Version":[null,0]}');
INSERT INTO Changes VALUES(256,111,'Readings',23,'01A22102-19EE-7B5A-8D0E-087A61FE6C48',NULL,'Insert','{"Id":[null,23],"SessionId":[null,10],"Ordinal":[null,1],"Text":[null,"1:2531mm"]}');
INSERT INTO Changes VALUES(257,111,'Readings',24,'01A22102-19EE-7B5A-8D0E-087A61FE6C48',NULL,'Insert','{"Id":[null,24],"SessionId":[null,10],"Ordinal":[null,2],"Text":[null,"3:7596mm"]}');
INSERT INTO Changes VALUES(258,112,'Fitments',28,'01A22102-19C7-7126-87AE-7D527692C3B7',5,'Update','{"ReasonOff":["","the diesel runs out of revs at 90 km/h on the old pair"],"ToDate":[null,"2024-10-05"],"ToOdometerMetres":[null,143008000],"ToOdometerText":[null,"143 008"],"ToOdometerUnit":[null,"km"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(259,112,'Fitments',31,'01A22102-19F7-751C-B0E9-1AD4625DDF8E',5,'Insert','{"Id":[null,31],"ComponentId":[null,30],"FromDate":[null,"2024-10-05"],"FromOdometerMetres":[null,143008000],"FromOdometerText":[null,"143 008"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"RearAxle"],"Reason":[null,"the diesel runs out of revs at 90 km/h on the old pair"],"ReasonOff":[null,""],"Uid":[null,"01A22102-19F7-751C-B0E9-1AD4625DDF8E"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(260,113,'Sessions',11,'01A22102-1A02-7571-9016-BF5866584025',NULL,'Insert','{"Id":[null,11],"Align":[null,"0.02"],"ComponentId":[null,31],"Conditions":[null,"alone, axle on trestles before it went in"],"Date":[null,"2024-10-06"],"Helper":[null,""],"Hub":[null,""],"Method":[null,"turn count"],"Notes":[null,"The third count is half a turn long: the telephone rang. Left in as counted; to be done again on the vehicle."],"ReadTo":[null,"0.25"],"Uid":[null,"01A22102-1A02-7571-9016-BF5866584025"],"Version":[null,0],"Wheels":[null,"OneHeld"]}');
INSERT INTO Changes VALUES(261,113,'Readings',25,'01A22102-1A02-7571-9016-BF5866584025',NULL,'Insert','{"Id":[null,25],"SessionId":[null,11],"Ordinal":[null,1],"Text":[null,"20:41"]}');
INSERT INTO Changes VALUES(262,113,'Readings',26,'01A22102-1A02-7571-9016-BF5866584025',NULL,'Insert','{"Id":[null,26],"SessionId":[null,11],"Ordinal":[null,2],"Text":[null,"20:41"]}');
INSERT INTO Changes VALUES(263,113,'Readings',27,'01A22102-1A02-7571-9016-BF5866584025',NULL,'Insert','{"Id":[null,27],"SessionId":[null,11],"Ordinal":[null,3],"Text":[null,"20:41 1/2"]}');
INSERT INTO Changes VALUES(264,114,'Fitments',29,'01A22102-19D3-79B5-9976-F7D22A40C3D0',5,'Update','{"ReasonOff":["","has to match the rear"],"ToDate":[null,"2024-10-07"],"ToOdometerMetres":[null,143008000],"ToOdometerText":[null,"143 008"],"ToOdometerUnit":[null,"km"],"ToOrder":[null,1],"Version":[0,1]}');
INSERT INTO Changes VALUES(265,114,'Fitments',32,'01A22102-1A10-7528-AE8E-0A32FA5C0A89',5,'Insert','{"Id":[null,32],"ComponentId":[null,31],"FromDate":[null,"2024-10-07"],"FromOdometerMetres":[null,143008000],"FromOdometerText":[null,"143 008"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"FrontAxle"],"Reason":[null,"has to match the rear"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1A10-7528-AE8E-0A32FA5C0A89"],"VehicleId":[null,5],"Version":[null,0]}');
INSERT INTO Changes VALUES(266,115,'Sessions',12,'01A22102-1A1A-7FCB-9987-A6BE12C8BBA8',5,'Insert','{"Id":[null,12],"Align":[null,"0.02"],"ComponentId":[null,31],"Conditions":[null,"transfer case in two-wheel drive, front on stands"],"Date":[null,"2024-10-08"],"Helper":[null,"Ilse Marrick"],"Hub":[null,""],"Method":[null,"turn count"],"Notes":[null,""],"ReadTo":[null,"0.25"],"Uid":[null,"01A22102-1A1A-7FCB-9987-A6BE12C8BBA8"],"VehicleId":[null,5],"Version":[null,0],"Wheels":[null,"OneHeld"]}');
INSERT INTO Changes VALUES(267,115,'Readings',28,'01A22102-1A1A-7FCB-9987-A6BE12C8BBA8',5,'Insert','{"Id":[null,28],"SessionId":[null,12],"Ordinal":[null,1],"Text":[null,"10:20 1/2"]}');
INSERT INTO Changes VALUES(268,115,'Readings',29,'01A22102-1A1A-7FCB-9987-A6BE12C8BBA8',5,'Insert','{"Id":[null,29],"SessionId":[null,12],"Ordinal":[null,2],"Text":[null,"20:41"]}');
INSERT INTO Changes VALUES(269,116,'Jobs',4,'01A22102-1A1E-79FB-A1D9-3BC5DF99BBE7',5,'Insert','{"Id":[null,4],"VehicleId":[null,5],"Title":[null,"front propshaft"],"Description":[null,""],"State":[null,"UnderWay"],"BeforeHandover":[null,0],"BlockedBy":[null,""],"Uid":[null,"01A22102-1A1E-79FB-A1D9-3BC5DF99BBE7"],"Version":[null,0]}');
INSERT INTO Changes VALUES(270,117,'OutsideWorks',1,'01A22102-1A4A-7A80-9FED-37466A24EDC8',5,'Insert','{"Id":[null,1],"JobId":[null,4],"SupplierId":[null,2],"What":[null,"new joints and balancing"],"Sent":[null,"2024-10-07"],"Certificate":[null,""],"Uid":[null,"01A22102-1A4A-7A80-9FED-37466A24EDC8"],"Version":[null,0]}');
INSERT INTO Changes VALUES(271,118,'Vehicles',6,'01A22102-1A56-7278-95A1-88F0E0DEBB8F',6,'Insert','{"Id":[null,6],"ChassisNumber":[null,"not found yet"],"DrivesInFront":[null,0],"Name":[null,"Pellow"],"NameKey":[null,"PELLOW"],"Notes":[null,"Panel van, for the shop itself once the others are out."],"OdometerUnit":[null,"Kilometres"],"Owner":[null,"the shop"],"Registration":[null,""],"State":[null,"Planned"],"Uid":[null,"01A22102-1A56-7278-95A1-88F0E0DEBB8F"],"Version":[null,0],"Description":[null,"panel van, about 1976"]}');
INSERT INTO Changes VALUES(272,119,'Goals',6,'01A22102-1A5A-766D-A982-5039EA997003',6,'Insert','{"Id":[null,6],"EngineSpeed":[null,"2600 rpm"],"EngineSpeedSi":[null,43.333333333333336],"Gear":[null,""],"Kind":[null,"cruise"],"Speed":[null,"95 km/h"],"SpeedSi":[null,26.38888888888889],"Tolerance":[null,""],"Uid":[null,"01A22102-1A5A-766D-A982-5039EA997003"],"VehicleId":[null,6],"Version":[null,0]}');
INSERT INTO Changes VALUES(273,120,'Components',33,'01A22102-1A5E-724F-85F3-CAF4A375DD7C',NULL,'Insert','{"Id":[null,33],"Donor":[null,"its own"],"Kind":[null,"engine"],"Name":[null,"Corvane 2.1 four, van''s own"],"Notes":[null,"Turns over by hand."],"SerialNumber":[null,""],"Shelf":[null,""],"Uid":[null,"01A22102-1A5E-724F-85F3-CAF4A375DD7C"],"Version":[null,0]}');
INSERT INTO Changes VALUES(274,121,'Components',34,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',NULL,'Insert','{"Id":[null,34],"Donor":[null,"its own"],"Kind":[null,"transmission"],"Name":[null,"Delmere D4 column-shift"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"Uid":[null,"01A22102-1A6E-7D1C-B4A4-1A99588E1E61"],"Version":[null,0]}');
INSERT INTO Changes VALUES(275,121,'Gears',26,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',NULL,'Insert','{"Id":[null,26],"TransmissionId":[null,34],"Ordinal":[null,1],"Name":[null,"1"],"RatioSi":[null,3.5],"RatioSource":[null,"OwnersWord"],"RatioText":[null,"3.5"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(276,121,'Gears',27,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',NULL,'Insert','{"Id":[null,27],"TransmissionId":[null,34],"Ordinal":[null,2],"Name":[null,"2"],"RatioSi":[null,2.1],"RatioSource":[null,"OwnersWord"],"RatioText":[null,"2.1"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(277,121,'Gears',28,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',NULL,'Insert','{"Id":[null,28],"TransmissionId":[null,34],"Ordinal":[null,3],"Name":[null,"3"],"RatioSi":[null,1.4],"RatioSource":[null,"OwnersWord"],"RatioText":[null,"1.4"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(278,121,'Gears',29,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',NULL,'Insert','{"Id":[null,29],"TransmissionId":[null,34],"Ordinal":[null,4],"Name":[null,"4"],"RatioSi":[null,1],"RatioSource":[null,"OwnersWord"],"RatioText":[null,"1.0"],"RatioUnit":[null,""]}');
INSERT INTO Changes VALUES(279,122,'Components',35,'01A22102-1A76-70DD-9E62-EC8DFDC5D66B',NULL,'Insert','{"Id":[null,35],"Donor":[null,"its own"],"Kind":[null,"axle"],"Name":[null,"van''s own axle, no tag"],"Notes":[null,""],"SerialNumber":[null,""],"Shelf":[null,""],"Uid":[null,"01A22102-1A76-70DD-9E62-EC8DFDC5D66B"],"Version":[null,0]}');
INSERT INTO Changes VALUES(280,123,'Fitments',33,'01A22102-1AA9-7745-BF50-870282ABE906',6,'Insert','{"Id":[null,33],"ComponentId":[null,33],"FromDate":[null,"2024-08-31"],"FromOrder":[null,1],"Position":[null,"Engine"],"Reason":[null,"as found"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1AA9-7745-BF50-870282ABE906"],"VehicleId":[null,6],"Version":[null,0]}');
INSERT INTO Changes VALUES(281,124,'Fitments',34,'01A22102-1AC7-7B7A-A719-CF85A192A1F2',6,'Insert','{"Id":[null,34],"ComponentId":[null,34],"FromDate":[null,"2024-08-31"],"FromOrder":[null,2],"Position":[null,"Transmission"],"Reason":[null,"as found"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1AC7-7B7A-A719-CF85A192A1F2"],"VehicleId":[null,6],"Version":[null,0]}');
INSERT INTO Changes VALUES(282,125,'Fitments',35,'01A22102-1AE0-73EC-8B28-843921F2419B',6,'Insert','{"Id":[null,35],"ComponentId":[null,35],"FromDate":[null,"2024-08-31"],"FromOrder":[null,3],"Position":[null,"RearAxle"],"Reason":[null,"as found"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1AE0-73EC-8B28-843921F2419B"],"VehicleId":[null,6],"Version":[null,0]}');
INSERT INTO Changes VALUES(283,126,'Fitments',36,'01A22102-1B0A-7BBA-917D-AF0374BAB2C1',6,'Insert','{"Id":[null,36],"ComponentId":[null,5],"FromDate":[null,"2024-12-07"],"FromOdometerMetres":[null,118300000],"FromOdometerText":[null,"118 300"],"FromOdometerUnit":[null,"km"],"FromOrder":[null,1],"Position":[null,"Tyres"],"Reason":[null,"came off Brindle, good enough to push it about"],"ReasonOff":[null,""],"Uid":[null,"01A22102-1B0A-7BBA-917D-AF0374BAB2C1"],"VehicleId":[null,6],"Version":[null,0]}');
CREATE TABLE IF NOT EXISTS "Attachments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Attachments" PRIMARY KEY AUTOINCREMENT,
    "About" TEXT NOT NULL,
    "AboutUid" TEXT NOT NULL,
    "Caption" TEXT NOT NULL,
    "FileName" TEXT NOT NULL,
    "Length" INTEGER NOT NULL,
    "MediaType" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "TakenEarliest" TEXT NULL,
    "TakenLatest" TEXT NULL,
    "TakenText" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "What" TEXT NOT NULL DEFAULT 'Paper',
    CONSTRAINT "CK_Attachments_About" CHECK ("About" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')),
    CONSTRAINT "CK_Attachments_FileName" CHECK (length(trim("FileName")) > 0),
    CONSTRAINT "CK_Attachments_Length" CHECK ("Length" >= 0),
    CONSTRAINT "CK_Attachments_Sha256" CHECK (length("Sha256") = 64 AND "Sha256" NOT GLOB '*[^0-9a-f]*'),
    CONSTRAINT "CK_Attachments_Taken" CHECK (("TakenText" IS NOT NULL OR ("TakenEarliest" IS NULL AND "TakenLatest" IS NULL)) AND ("TakenEarliest" IS NULL OR "TakenLatest" IS NULL OR "TakenEarliest" <= "TakenLatest")),
    CONSTRAINT "CK_Attachments_TakenEarliest" CHECK ("TakenEarliest" IS date("TakenEarliest")),
    CONSTRAINT "CK_Attachments_TakenLatest" CHECK ("TakenLatest" IS date("TakenLatest")),
    CONSTRAINT "CK_Attachments_What" CHECK ("What" IN ('Paper', 'Photo', 'Receipt', 'Drawing'))
) STRICT;
INSERT INTO Attachments VALUES(1,'Vehicle','01A22102-16C3-7BF3-92EE-6A94334BEA5E','Tolland yard, gearbox','receipt-five-speed.jpg',16952,'image/jpeg','b8077dc62af3595ff551935f89a1581b8be5598e26f11b0051e4fd86b203827a','2024-07-06','2024-07-06','6 July 2024','01A22102-1802-72A0-860E-C93FD1E496FA',0,'Receipt');
INSERT INTO Attachments VALUES(2,'Vehicle','01A22102-16C3-7BF3-92EE-6A94334BEA5E','back on the road','tansy.jpg',30669,'image/jpeg','f27603f2d89ea799914aed112e52fcabed9856a2d2e21b16dbeec9060d992b23','2024-08-01','2024-08-31','August 2024','01A22102-1832-7A75-8BA0-4BF233883DD1',0,'Photo');
INSERT INTO Attachments VALUES(3,'Job','01A22102-17DE-70E0-A6AC-9E894D36AB6C','before: on stands, in primer, its own box still in','tansy-on-stands.jpg',26072,'image/jpeg','05262e5b0c89b2a8bbc88cd791c3f223a4d90f13b539b895605e9d9788d2cca6','2024-03-01','2024-05-31','spring 2024','01A22102-1848-722C-B243-9DEFDD2ED06F',0,'Photo');
CREATE TABLE IF NOT EXISTS "Specs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Specs" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NULL,
    "NumberSi" REAL NOT NULL,
    "NumberSource" TEXT NOT NULL,
    "NumberText" TEXT NOT NULL,
    "NumberUnit" TEXT NOT NULL,
    "Spec" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    CONSTRAINT "CK_Specs_Altitude" CHECK ("Spec" <> 'Altitude' OR "NumberSi" BETWEEN -500.0 AND 6000.0),
    CONSTRAINT "CK_Specs_Bore" CHECK ("Spec" <> 'Bore' OR "NumberSi" BETWEEN 0.03 AND 0.4),
    CONSTRAINT "CK_Specs_Bump" CHECK ("Spec" <> 'Bump' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_ClutchRating" CHECK ("Spec" <> 'ClutchRating' OR "NumberSi" BETWEEN 10.0 AND 10000.0),
    CONSTRAINT "CK_Specs_Correction" CHECK ("Spec" <> 'Correction' OR "NumberSi" BETWEEN 0.01 AND 100.0),
    CONSTRAINT "CK_Specs_CriticalAltitude" CHECK ("Spec" <> 'CriticalAltitude' OR "NumberSi" BETWEEN -500.0 AND 11000.0),
    CONSTRAINT "CK_Specs_DragArea" CHECK ("Spec" <> 'DragArea' OR "NumberSi" BETWEEN 0.2 AND 12.0),
    CONSTRAINT "CK_Specs_DrivenShare" CHECK ("Spec" <> 'DrivenShare' OR "NumberSi" BETWEEN 0.05 AND 1.0),
    CONSTRAINT "CK_Specs_Droop" CHECK ("Spec" <> 'Droop' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_FrontAxleMass" CHECK ("Spec" <> 'FrontAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_FrontPad" CHECK ("Spec" <> 'FrontPad' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_FrontSprings" CHECK ("Spec" <> 'FrontSprings' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_GravityHeight" CHECK ("Spec" <> 'GravityHeight' OR "NumberSi" BETWEEN 0.1 AND 3.0),
    CONSTRAINT "CK_Specs_HubFaces" CHECK ("Spec" <> 'HubFaces' OR "NumberSi" BETWEEN 0.6 AND 3.0),
    CONSTRAINT "CK_Specs_JointRating" CHECK ("Spec" <> 'JointRating' OR "NumberSi" BETWEEN 10.0 AND 100000.0),
    CONSTRAINT "CK_Specs_LoadedRadius" CHECK ("Spec" <> 'LoadedRadius' OR "NumberSi" BETWEEN 0.1 AND 1.0),
    CONSTRAINT "CK_Specs_LowestPull" CHECK ("Spec" <> 'LowestPull' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_LowStep" CHECK ("Spec" <> 'LowStep' OR "NumberSi" BETWEEN 1.05 AND 2.5),
    CONSTRAINT "CK_Specs_Mass" CHECK ("Spec" <> 'Mass' OR "NumberSi" BETWEEN 100.0 AND 60000.0),
    CONSTRAINT "CK_Specs_Number" CHECK (("NumberSi" IS NULL) + ("NumberUnit" IS NULL) + ("NumberText" IS NULL) + ("NumberSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Specs_NumberSi" CHECK ("NumberSi" BETWEEN -1.0 AND 2000000.0),
    CONSTRAINT "CK_Specs_NumberSource" CHECK ("NumberSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Specs_Offset" CHECK ("Spec" <> 'Offset' OR "NumberSi" BETWEEN -0.2 AND 0.2),
    CONSTRAINT "CK_Specs_OutputPlan" CHECK ("Spec" <> 'OutputPlan' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_OutputSide" CHECK ("Spec" <> 'OutputSide' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_Owner" CHECK (("ComponentId" IS NULL) + ("VehicleId" IS NULL) = 1),
    CONSTRAINT "CK_Specs_PeakPower" CHECK ("Spec" <> 'PeakPower' OR "NumberSi" BETWEEN 500.0 AND 2000000.0),
    CONSTRAINT "CK_Specs_PeakPowerAt" CHECK ("Spec" <> 'PeakPowerAt' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_PeakTorque" CHECK ("Spec" <> 'PeakTorque' OR "NumberSi" BETWEEN 1.0 AND 5000.0),
    CONSTRAINT "CK_Specs_PeakTorqueAt" CHECK ("Spec" <> 'PeakTorqueAt' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_Perches" CHECK ("Spec" <> 'Perches' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_PilotBore" CHECK ("Spec" <> 'PilotBore' OR "NumberSi" BETWEEN 0.005 AND 0.1),
    CONSTRAINT "CK_Specs_PinionPlan" CHECK ("Spec" <> 'PinionPlan' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PinionSide" CHECK ("Spec" <> 'PinionSide' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PinionToPerch" CHECK ("Spec" <> 'PinionToPerch' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PitchCircle" CHECK ("Spec" <> 'PitchCircle' OR "NumberSi" BETWEEN 0.05 AND 0.4),
    CONSTRAINT "CK_Specs_PulsesPerTurn" CHECK ("Spec" <> 'PulsesPerTurn' OR "NumberSi" BETWEEN 0.01 AND 1000.0),
    CONSTRAINT "CK_Specs_RearAxleMass" CHECK ("Spec" <> 'RearAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_RearPad" CHECK ("Spec" <> 'RearPad' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_RearSprings" CHECK ("Spec" <> 'RearSprings' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_Reverse" CHECK ("Spec" <> 'Reverse' OR "NumberSi" BETWEEN 0.3 AND 20.0),
    CONSTRAINT "CK_Specs_RimWidth" CHECK ("Spec" <> 'RimWidth' OR "NumberSi" BETWEEN 0.05 AND 0.6),
    CONSTRAINT "CK_Specs_RollingResistance" CHECK ("Spec" <> 'RollingResistance' OR "NumberSi" BETWEEN 0.003 AND 0.4),
    CONSTRAINT "CK_Specs_SlipOut" CHECK ("Spec" <> 'SlipOut' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_SlipStroke" CHECK ("Spec" <> 'SlipStroke' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_Spec" CHECK ("Spec" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'CriticalAltitude', 'PilotBore', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'Spigot', 'ClutchRating', 'Reverse', 'LowStep', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'Perches', 'PinionToPerch', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'RearSprings', 'FrontPad', 'RearPad')),
    CONSTRAINT "CK_Specs_Spigot" CHECK ("Spec" <> 'Spigot' OR "NumberSi" BETWEEN 0.005 AND 0.1),
    CONSTRAINT "CK_Specs_StallSpeed" CHECK ("Spec" <> 'StallSpeed' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_StallTorqueRatio" CHECK ("Spec" <> 'StallTorqueRatio' OR "NumberSi" BETWEEN 1.0 AND 5.0),
    CONSTRAINT "CK_Specs_TorquePoints" CHECK ("Spec" <> 'TorquePoints' OR "NumberSi" BETWEEN 0.0 AND 5000.0),
    CONSTRAINT "CK_Specs_TorqueRating" CHECK ("Spec" <> 'TorqueRating' OR "NumberSi" BETWEEN 10.0 AND 100000.0),
    CONSTRAINT "CK_Specs_TurnsWanted" CHECK ("Spec" <> 'TurnsWanted' OR "NumberSi" BETWEEN 50.0 AND 1000000.0),
    CONSTRAINT "CK_Specs_Wheelbase" CHECK ("Spec" <> 'Wheelbase' OR "NumberSi" BETWEEN 1.0 AND 10.0),
    CONSTRAINT "FK_Specs_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id"),
    CONSTRAINT "FK_Specs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id")
) STRICT;
INSERT INTO Specs VALUES(1,NULL,1.0700000000000000621,'Measured','1070 mm','mm','RearSprings',1);
INSERT INTO Specs VALUES(2,1,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(3,2,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(4,3,1.0700000000000000621,'Measured','1070 mm','mm','Perches',NULL);
INSERT INTO Specs VALUES(5,4,1.070999999999999952,'Measured','1071 mm','mm','Perches',NULL);
INSERT INTO Specs VALUES(6,7,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(7,8,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(8,NULL,1360.0,'Measured','1360 kg ± 10 kg','kg','Mass',3);
INSERT INTO Specs VALUES(9,NULL,830.0,'Measured','830 kg ± 5 kg','kg','FrontAxleMass',3);
INSERT INTO Specs VALUES(10,NULL,860.0,'Measured','860 kg ± 5 kg','kg','RearAxleMass',3);
INSERT INTO Specs VALUES(11,14,188.0,'MakersData','1200:158 Nm; 2400:182 Nm; 3200:188 Nm; 5400:156 Nm','N·m','TorquePoints',NULL);
INSERT INTO Specs VALUES(12,14,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(13,15,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(14,16,260.0,'MakersData','260 Nm','N·m','ClutchRating',NULL);
INSERT INTO Specs VALUES(15,16,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(16,19,870.0,'Tag','870','','TurnsWanted',NULL);
INSERT INTO Specs VALUES(17,21,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(18,22,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(19,25,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(20,26,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
CREATE TABLE IF NOT EXISTS "PlannedChanges" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlannedChanges" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NULL,
    "Listed" TEXT NOT NULL,
    "PlanId" INTEGER NOT NULL,
    "Position" TEXT NOT NULL,
    CONSTRAINT "CK_PlannedChanges_Position" CHECK ("Position" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'FrontTyres', 'Speedometer')),
    CONSTRAINT "CK_PlannedChanges_What" CHECK ("ComponentId" IS NOT NULL OR length(trim("Listed")) > 0),
    CONSTRAINT "FK_PlannedChanges_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_PlannedChanges_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id")
) STRICT;
CREATE TABLE IF NOT EXISTS "Fitments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Fitments" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NOT NULL,
    "FromAsTypedEarliest" TEXT NULL,
    "FromAsTypedLatest" TEXT NULL,
    "FromAsTypedText" TEXT NULL,
    "FromDate" TEXT NOT NULL,
    "FromOdometerMetres" REAL NULL,
    "FromOdometerText" TEXT NULL,
    "FromOdometerUnit" TEXT NULL,
    "FromOrder" INTEGER NOT NULL,
    "Position" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "ReasonOff" TEXT NOT NULL,
    "ToAsTypedEarliest" TEXT NULL,
    "ToAsTypedLatest" TEXT NULL,
    "ToAsTypedText" TEXT NULL,
    "ToDate" TEXT NULL,
    "ToOdometerMetres" REAL NULL,
    "ToOdometerText" TEXT NULL,
    "ToOdometerUnit" TEXT NULL,
    "ToOrder" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Fitments_Forward" CHECK (("FromDate", "FromOrder") < ("ToDate", "ToOrder")),
    CONSTRAINT "CK_Fitments_FromAsTyped" CHECK (("FromAsTypedText" IS NOT NULL OR ("FromAsTypedEarliest" IS NULL AND "FromAsTypedLatest" IS NULL)) AND ("FromAsTypedEarliest" IS NULL OR "FromAsTypedLatest" IS NULL OR "FromAsTypedEarliest" <= "FromAsTypedLatest")),
    CONSTRAINT "CK_Fitments_FromAsTypedEarliest" CHECK ("FromAsTypedEarliest" IS date("FromAsTypedEarliest")),
    CONSTRAINT "CK_Fitments_FromAsTypedLatest" CHECK ("FromAsTypedLatest" IS date("FromAsTypedLatest")),
    CONSTRAINT "CK_Fitments_FromDate" CHECK ("FromDate" IS date("FromDate")),
    CONSTRAINT "CK_Fitments_FromOdometer" CHECK (("FromOdometerMetres" IS NULL) + ("FromOdometerUnit" IS NULL) + ("FromOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_FromOdometerMetres" CHECK ("FromOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_Fitments_FromWithin" CHECK (("FromAsTypedEarliest" IS NULL OR "FromAsTypedEarliest" <= "FromDate") AND ("FromAsTypedLatest" IS NULL OR "FromDate" <= "FromAsTypedLatest")),
    CONSTRAINT "CK_Fitments_Off" CHECK (("ToDate" IS NULL) + ("ToOrder" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Fitments_Position" CHECK ("Position" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'FrontTyres', 'Speedometer')),
    CONSTRAINT "CK_Fitments_ToAsTyped" CHECK (("ToAsTypedText" IS NOT NULL OR ("ToAsTypedEarliest" IS NULL AND "ToAsTypedLatest" IS NULL)) AND ("ToAsTypedEarliest" IS NULL OR "ToAsTypedLatest" IS NULL OR "ToAsTypedEarliest" <= "ToAsTypedLatest")),
    CONSTRAINT "CK_Fitments_ToAsTypedEarliest" CHECK ("ToAsTypedEarliest" IS date("ToAsTypedEarliest")),
    CONSTRAINT "CK_Fitments_ToAsTypedLatest" CHECK ("ToAsTypedLatest" IS date("ToAsTypedLatest")),
    CONSTRAINT "CK_Fitments_ToDate" CHECK ("ToDate" IS date("ToDate")),
    CONSTRAINT "CK_Fitments_ToOdometer" CHECK (("ToOdometerMetres" IS NULL) + ("ToOdometerUnit" IS NULL) + ("ToOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_ToOdometerMetres" CHECK ("ToOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_Fitments_ToWithin" CHECK (("ToAsTypedText" IS NULL OR "ToDate" IS NOT NULL) AND ("ToAsTypedEarliest" IS NULL OR "ToAsTypedEarliest" <= "ToDate") AND ("ToAsTypedLatest" IS NULL OR "ToDate" <= "ToAsTypedLatest")),
    CONSTRAINT "FK_Fitments_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Fitments_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Fitments VALUES(1,1,NULL,NULL,NULL,'2024-03-09',61204000.0,'61 204 km','km',1,'Engine','the frame came without one','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-10D1-78FE-B9C2-434A7605E22A',1,0);
INSERT INTO Fitments VALUES(2,2,NULL,NULL,NULL,'2024-03-09',61204000.0,'61 204 km','km',2,'Transmission','bolted up with the engine','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1269-76FD-B2BE-ECBDFA255AD1',1,0);
INSERT INTO Fitments VALUES(3,3,NULL,NULL,NULL,'2024-03-16',61204000.0,'61 204','km',1,'RearAxle','back under the frame after cleaning','own axle whines, pinion chipped; tag of this one says 3.90',NULL,NULL,NULL,'2024-10-12',64105000.0,'64 105','km',1,'01A22102-12C9-7F39-AA05-784F36728AFE',1,1);
INSERT INTO Fitments VALUES(4,5,NULL,NULL,NULL,'2024-03-16',61204000.0,'61 204','km',2,'Tyres','to roll the frame about','taller tyres, to calm the engine on the road',NULL,NULL,NULL,'2024-05-25',61690000.0,'61 690','km',1,'01A22102-133D-7B53-BE39-F41A2220281E',1,1);
INSERT INTO Fitments VALUES(5,6,NULL,NULL,NULL,'2024-05-25',61690000.0,'61 690','km',1,'Tyres','taller tyres, to calm the engine on the road','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1371-7514-82A3-3DF750334AA7',1,0);
INSERT INTO Fitments VALUES(6,4,NULL,NULL,NULL,'2024-10-12',64105000.0,'64 105','km',1,'RearAxle','own axle whines, pinion chipped; tag of this one says 3.90','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-13C4-7218-967C-42DF02395960',1,0);
INSERT INTO Fitments VALUES(7,7,NULL,NULL,NULL,'2024-03-02',61816512.384000003336,'38 411','mi',1,'Engine','rebuilt','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1595-783B-9C89-2C4AD450717E',2,0);
INSERT INTO Fitments VALUES(8,8,NULL,NULL,NULL,'2024-03-02',61816512.384000003336,'38 411','mi',2,'Transmission','rebuilt with the engine','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-15A7-76EB-B8AC-284872BE5DE8',2,0);
INSERT INTO Fitments VALUES(9,12,NULL,NULL,NULL,'2024-03-16',61816512.384000003336,'38 411','mi',3,'Propshaft','balanced, new joints','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-160B-795D-B20F-9E0D69DB8A62',2,0);
INSERT INTO Fitments VALUES(10,10,NULL,NULL,NULL,'2024-03-23',61816512.384000003336,'38 411','mi',1,'RearAxle','its own, new seals','too busy at 60; the long one from Ferrow',NULL,NULL,NULL,'2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'01A22102-163C-772F-A0F3-1DE50C0F6509',2,1);
INSERT INTO Fitments VALUES(11,13,NULL,NULL,NULL,'2024-04-06',61818121.728000000117,'38 412','mi',1,'Tyres','right size for the arches','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1654-73ED-9797-23B39C11A748',2,0);
INSERT INTO Fitments VALUES(12,11,NULL,NULL,NULL,'2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'RearAxle','too busy at 60; the long one from Ferrow','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-166C-7F32-8377-714B755F4EEF',2,0);
INSERT INTO Fitments VALUES(13,9,NULL,NULL,NULL,'2024-08-10',63639899.135999999941,'39 544','mi',1,'Overdrive','Rufus wants it quiet at 60','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-16AE-746E-A41D-156507DA0AD9',2,0);
INSERT INTO Fitments VALUES(14,14,NULL,NULL,NULL,'2024-04-13',148249550.59200000763,'92 118','mi',1,'Engine','back in after a head gasket','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-171D-78D6-82D2-EFE980D1074D',3,0);
INSERT INTO Fitments VALUES(15,15,NULL,NULL,NULL,'2024-04-13',148249550.59200000763,'92 118','mi',2,'Transmission','its own, for now','own box jumps out of second, and 70 mph is tiring',NULL,NULL,NULL,'2024-07-27',152678465.28000000119,'94 870','mi',1,'01A22102-172F-756B-A018-5958799A47A3',3,1);
INSERT INTO Fitments VALUES(16,17,NULL,NULL,NULL,'2024-04-13',148249550.59200000763,'92 118','mi',3,'RearAxle','cover off, teeth counted, new gasket','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1743-7FE5-BC3D-BE522BBE5F0A',3,0);
INSERT INTO Fitments VALUES(17,18,NULL,NULL,NULL,'2024-04-13',148249550.59200000763,'92 118','mi',4,'Tyres','as it came','legal tread',NULL,NULL,NULL,'2024-04-20',148249550.59200000763,'92 118','mi',1,'01A22102-1757-7CFD-BDF1-36D7D718CF78',3,1);
INSERT INTO Fitments VALUES(18,19,NULL,NULL,NULL,'2024-04-13',148249550.59200000763,'92 118','mi',5,'Speedometer','its own','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1783-7B13-A04F-1E35BFF01662',3,0);
INSERT INTO Fitments VALUES(19,20,NULL,NULL,NULL,'2024-04-20',148249550.59200000763,'92 118','mi',1,'Tyres','legal tread','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-17A5-71F2-8A49-37C6721522C6',3,0);
INSERT INTO Fitments VALUES(20,16,NULL,NULL,NULL,'2024-07-27',152678465.28000000119,'94 870','mi',1,'Transmission','own box jumps out of second, and 70 mph is tiring','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-17CC-7485-B911-AD07316D1D56',3,0);
INSERT INTO Fitments VALUES(21,21,NULL,NULL,NULL,'2024-09-14',0.0,'0','km',1,'Engine','odometer set to nought with the new dial','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1879-7628-9C0B-D5AEAD64FEF0',4,0);
INSERT INTO Fitments VALUES(22,22,NULL,NULL,NULL,'2024-09-14',0.0,'0','km',2,'Transmission','in with the engine','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1883-7E72-B796-8F1DE9977D73',4,0);
INSERT INTO Fitments VALUES(23,23,NULL,NULL,NULL,'2024-11-02',0.0,'0','km',1,'RearAxle','it came with the shell and bolts straight up','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1893-7D3B-A8E2-0E9667169CA3',4,0);
INSERT INTO Fitments VALUES(24,24,NULL,NULL,NULL,'2024-11-09',0.0,'0','km',1,'Tyres','onto its wheels at last','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-18A7-7F36-8DCA-32D7E940903B',4,0);
INSERT INTO Fitments VALUES(25,25,NULL,NULL,NULL,'2024-04-27',140220000.0,'140 220','km',1,'Engine','the petrol engine was worn out','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1955-7267-84FE-5AF46867803D',5,0);
INSERT INTO Fitments VALUES(26,26,NULL,NULL,NULL,'2024-04-27',140220000.0,'140 220','km',2,'Transmission','new bearings','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1967-72A6-B8BF-9D5BC03F79B5',5,0);
INSERT INTO Fitments VALUES(27,27,NULL,NULL,NULL,'2024-04-27',140220000.0,'140 220','km',3,'TransferCase','new seals','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-19A8-7316-80C7-27310758972C',5,0);
INSERT INTO Fitments VALUES(28,28,NULL,NULL,NULL,'2024-05-11',140220000.0,'140 220','km',1,'RearAxle','its own','the diesel runs out of revs at 90 km/h on the old pair',NULL,NULL,NULL,'2024-10-05',143008000.0,'143 008','km',1,'01A22102-19C7-7126-87AE-7D527692C3B7',5,1);
INSERT INTO Fitments VALUES(29,29,NULL,NULL,NULL,'2024-05-11',140220000.0,'140 220','km',2,'FrontAxle','its own','has to match the rear',NULL,NULL,NULL,'2024-10-07',143008000.0,'143 008','km',1,'01A22102-19D3-79B5-9976-F7D22A40C3D0',5,1);
INSERT INTO Fitments VALUES(30,32,NULL,NULL,NULL,'2024-05-11',140220000.0,'140 220','km',3,'Tyres','mud pattern, to clear the arches','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-19E3-7B7C-8B61-B3F89D680DFB',5,0);
INSERT INTO Fitments VALUES(31,30,NULL,NULL,NULL,'2024-10-05',143008000.0,'143 008','km',1,'RearAxle','the diesel runs out of revs at 90 km/h on the old pair','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-19F7-751C-B0E9-1AD4625DDF8E',5,0);
INSERT INTO Fitments VALUES(32,31,NULL,NULL,NULL,'2024-10-07',143008000.0,'143 008','km',1,'FrontAxle','has to match the rear','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1A10-7528-AE8E-0A32FA5C0A89',5,0);
INSERT INTO Fitments VALUES(33,33,NULL,NULL,NULL,'2024-08-31',NULL,NULL,NULL,1,'Engine','as found','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1AA9-7745-BF50-870282ABE906',6,0);
INSERT INTO Fitments VALUES(34,34,NULL,NULL,NULL,'2024-08-31',NULL,NULL,NULL,2,'Transmission','as found','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1AC7-7B7A-A719-CF85A192A1F2',6,0);
INSERT INTO Fitments VALUES(35,35,NULL,NULL,NULL,'2024-08-31',NULL,NULL,NULL,3,'RearAxle','as found','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1AE0-73EC-8B28-843921F2419B',6,0);
INSERT INTO Fitments VALUES(36,5,NULL,NULL,NULL,'2024-12-07',118300000.0,'118 300','km',1,'Tyres','came off Brindle, good enough to push it about','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1B0A-7BBA-917D-AF0374BAB2C1',6,0);
CREATE TABLE IF NOT EXISTS "Sessions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Sessions" PRIMARY KEY AUTOINCREMENT,
    "Align" TEXT NULL,
    "Between" TEXT NULL,
    "ComponentId" INTEGER NULL,
    "Conditions" TEXT NOT NULL,
    "Construction" TEXT NULL,
    "Date" TEXT NOT NULL,
    "Gear" TEXT NULL,
    "Helper" TEXT NOT NULL,
    "Hub" TEXT NULL,
    "Loaded" INTEGER NULL,
    "Method" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "Pressure" TEXT NULL,
    "ReadTo" TEXT NULL,
    "Step" TEXT NULL,
    "Studs" INTEGER NULL,
    "Tape" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    "Version" INTEGER NOT NULL,
    "Wheels" TEXT NULL,
    CONSTRAINT "CK_Sessions_Between" CHECK ("Between" IN ('Adjacent', 'SkipOne', 'Across')),
    CONSTRAINT "CK_Sessions_bolt_circle" CHECK ("Method" <> 'bolt circle' OR ("Studs" IS NOT NULL AND "Between" IS NOT NULL AND "Tape" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Sessions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Sessions_Gear" CHECK (length(trim("Gear")) > 0),
    CONSTRAINT "CK_Sessions_gear_count" CHECK ("Method" <> 'gear count' OR ("Gear" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_loaded_radius" CHECK ("Method" <> 'loaded radius' OR ("Tape" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Method" CHECK ("Method" IN ('turn count', 'gear count', 'roll-out', 'teeth', 'loaded radius', 'bolt circle', 'shaft angles', 'weighbridge', 'speedometer run')),
    CONSTRAINT "CK_Sessions_roll-out" CHECK ("Method" <> 'roll-out' OR ("Loaded" IS NOT NULL AND "Construction" IS NOT NULL AND "Tape" IS NOT NULL AND "Align" IS NOT NULL AND "Pressure" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_speedometer_run" CHECK ("Method" <> 'speedometer run' OR ("Tape" IS NOT NULL AND "Step" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Subject" CHECK (("ComponentId" IS NULL) = ("Method" IN ('weighbridge', 'speedometer run')) AND ("ComponentId" IS NOT NULL OR "VehicleId" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_turn_count" CHECK ("Method" <> 'turn count' OR ("Wheels" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL AND "Hub" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_weighbridge" CHECK ("Method" <> 'weighbridge' OR ("Step" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Wheels" CHECK ("Wheels" IN ('OneHeld', 'Together', 'Each')),
    CONSTRAINT "FK_Sessions_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Sessions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Sessions VALUES(1,'0.01',NULL,6,'shed floor, level, driver aboard','Radial','2024-06-01',NULL,'Piet Arlow',NULL,1,'roll-out','','2.4 bar',NULL,NULL,NULL,'2 mm','01A22102-138A-7396-A86B-36C493B866D9',1,0,NULL);
INSERT INTO Sessions VALUES(2,'0.02',NULL,4,'on stands, left wheel held, chalk on the flange',NULL,'2024-10-26',NULL,'Piet Arlow','',NULL,'turn count','Done because the engine was far too busy on the first drive.',NULL,'0.25',NULL,NULL,NULL,'01A22102-13DA-708C-A2F5-CFD41BB4E2F3',1,0,'OneHeld');
INSERT INTO Sessions VALUES(3,'0.01',NULL,13,'loose wheel along the bench rail','Bias','2024-04-06',NULL,'',NULL,0,'roll-out','','26 psi',NULL,NULL,NULL,'2 mm','01A22102-165E-7371-B1FB-8F9823D43AB1',NULL,0,NULL);
INSERT INTO Sessions VALUES(4,'0.02',NULL,11,'rolled along the yard, both wheels on the ground',NULL,'2024-06-16',NULL,'Rufus Keel','',NULL,'turn count','',NULL,'0.25',NULL,NULL,NULL,'01A22102-167A-73F5-981F-292CCD8BDE71',2,0,'Together');
INSERT INTO Sessions VALUES(5,'0.01',NULL,13,'same run along the yard','Bias','2024-06-16',NULL,'Rufus Keel',NULL,1,'roll-out','','26 psi',NULL,NULL,NULL,'2 mm','01A22102-1682-75CE-95AA-1C1B06D1C764',2,0,NULL);
INSERT INTO Sessions VALUES(6,'0.01',NULL,20,'level car park, half a tank, driver aboard','Radial','2024-05-04',NULL,'Dorrit Ames',NULL,1,'roll-out','','2.2 bar',NULL,NULL,NULL,'2 mm','01A22102-17B6-7B33-AB28-7D6AC5700513',3,0,NULL);
INSERT INTO Sessions VALUES(7,'0.02',NULL,16,'on the bench, paper disc on the input',NULL,'2024-07-20','5','Piet Arlow',NULL,NULL,'gear count','',NULL,'0.1',NULL,NULL,NULL,'01A22102-17BA-743D-9A1D-80E3151078A3',NULL,0,NULL);
INSERT INTO Sessions VALUES(8,'0.02',NULL,23,'alone, three turns before the light went',NULL,'2024-11-09',NULL,'','',NULL,'turn count','',NULL,'0.25',NULL,NULL,NULL,'01A22102-18EB-7937-91F2-7D511CF87094',4,0,'OneHeld');
INSERT INTO Sessions VALUES(9,'0.01',NULL,24,'shed floor, shell without glass yet','Radial','2024-11-16',NULL,'Bastian Orme',NULL,1,'roll-out','','2.0 bar',NULL,NULL,NULL,'2 mm','01A22102-18EE-79D3-87C1-970F335C34FD',4,0,NULL);
INSERT INTO Sessions VALUES(10,'0.01',NULL,32,'one loose wheel along the shed floor','Radial','2024-05-11',NULL,'',NULL,0,'roll-out','','3.5 bar',NULL,NULL,NULL,'2 mm','01A22102-19EE-7B5A-8D0E-087A61FE6C48',NULL,0,NULL);
INSERT INTO Sessions VALUES(11,'0.02',NULL,31,'alone, axle on trestles before it went in',NULL,'2024-10-06',NULL,'','',NULL,'turn count','The third count is half a turn long: the telephone rang. Left in as counted; to be done again on the vehicle.',NULL,'0.25',NULL,NULL,NULL,'01A22102-1A02-7571-9016-BF5866584025',NULL,0,'OneHeld');
INSERT INTO Sessions VALUES(12,'0.02',NULL,31,'transfer case in two-wheel drive, front on stands',NULL,'2024-10-08',NULL,'Ilse Marrick','',NULL,'turn count','',NULL,'0.25',NULL,NULL,NULL,'01A22102-1A1A-7FCB-9987-A6BE12C8BBA8',5,0,'OneHeld');
CREATE TABLE IF NOT EXISTS "Components" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Components" PRIMARY KEY AUTOINCREMENT,
    "BoughtEarliest" TEXT NULL,
    "BoughtLatest" TEXT NULL,
    "BoughtText" TEXT NULL,
    "Condition" TEXT NULL,
    "Construction" TEXT NULL,
    "ConverterLocksUp" INTEGER NULL,
    "Donor" TEXT NOT NULL,
    "DriveTeeth" INTEGER NULL,
    "DrivenTeeth" INTEGER NULL,
    "FrontDrive" TEXT NULL,
    "GearTeeth" TEXT NULL,
    "HighSi" REAL NULL,
    "HighSource" TEXT NULL,
    "HighText" TEXT NULL,
    "HighUnit" TEXT NULL,
    "HubReductionSi" REAL NULL,
    "HubReductionSource" TEXT NULL,
    "HubReductionText" TEXT NULL,
    "HubReductionUnit" TEXT NULL,
    "IdleSi" REAL NULL,
    "IdleSource" TEXT NULL,
    "IdleText" TEXT NULL,
    "IdleUnit" TEXT NULL,
    "Induction" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "LowSi" REAL NULL,
    "LowSource" TEXT NULL,
    "LowText" TEXT NULL,
    "LowUnit" TEXT NULL,
    "Name" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "OverdriveRatioSi" REAL NULL,
    "OverdriveRatioSource" TEXT NULL,
    "OverdriveRatioText" TEXT NULL,
    "OverdriveRatioUnit" TEXT NULL,
    "OverdriveRing" INTEGER NULL,
    "OverdriveSun" INTEGER NULL,
    "Ownership" TEXT NULL,
    "PassengerOnTruck" INTEGER NULL,
    "Per" TEXT NULL,
    "Pickup" TEXT NULL,
    "Pinion" INTEGER NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
    "RedlineSi" REAL NULL,
    "RedlineSource" TEXT NULL,
    "RedlineText" TEXT NULL,
    "RedlineUnit" TEXT NULL,
    "Ring" INTEGER NULL,
    "Seat" TEXT NULL,
    "SerialNumber" TEXT NOT NULL,
    "Shelf" TEXT NOT NULL,
    "SizeText" TEXT NULL,
    "StatedCircumferenceSi" REAL NULL,
    "StatedCircumferenceSource" TEXT NULL,
    "StatedCircumferenceText" TEXT NULL,
    "StatedCircumferenceUnit" TEXT NULL,
    "StatedRatioSi" REAL NULL,
    "StatedRatioSource" TEXT NULL,
    "StatedRatioText" TEXT NULL,
    "StatedRatioUnit" TEXT NULL,
    "Studs" INTEGER NULL,
    "SupplierId" INTEGER NULL,
    "TakenFromId" INTEGER NULL,
    "Thread" TEXT NULL,
    "TwinRear" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "WornSi" REAL NULL,
    "WornSource" TEXT NULL,
    "WornText" TEXT NULL,
    "WornUnit" TEXT NULL,
    CONSTRAINT "CK_Components_Bought" CHECK (("BoughtText" IS NOT NULL OR ("BoughtEarliest" IS NULL AND "BoughtLatest" IS NULL)) AND ("BoughtEarliest" IS NULL OR "BoughtLatest" IS NULL OR "BoughtEarliest" <= "BoughtLatest")),
    CONSTRAINT "CK_Components_BoughtEarliest" CHECK ("BoughtEarliest" IS date("BoughtEarliest")),
    CONSTRAINT "CK_Components_BoughtLatest" CHECK ("BoughtLatest" IS date("BoughtLatest")),
    CONSTRAINT "CK_Components_Condition" CHECK (length(trim("Condition")) > 0),
    CONSTRAINT "CK_Components_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Components_DrivenTeeth" CHECK ("DrivenTeeth" BETWEEN 3 AND 99),
    CONSTRAINT "CK_Components_DriveTeeth" CHECK ("DriveTeeth" BETWEEN 1 AND 60),
    CONSTRAINT "CK_Components_FrontDrive" CHECK ("FrontDrive" IN ('ThroughShaft', 'Declutch', 'CentreDifferential', 'ClutchPack')),
    CONSTRAINT "CK_Components_GearTeeth" CHECK (length(trim("GearTeeth")) > 0),
    CONSTRAINT "CK_Components_High" CHECK (("HighSi" IS NULL) + ("HighUnit" IS NULL) + ("HighText" IS NULL) + ("HighSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HighSi" CHECK ("HighSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_HighSource" CHECK ("HighSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_HubReduction" CHECK (("HubReductionSi" IS NULL) + ("HubReductionUnit" IS NULL) + ("HubReductionText" IS NULL) + ("HubReductionSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HubReductionSi" CHECK ("HubReductionSi" BETWEEN 1.0 AND 6.0),
    CONSTRAINT "CK_Components_HubReductionSource" CHECK ("HubReductionSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Idle" CHECK (("IdleSi" IS NULL) + ("IdleUnit" IS NULL) + ("IdleText" IS NULL) + ("IdleSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_IdleSi" CHECK ("IdleSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_IdleSource" CHECK ("IdleSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Induction" CHECK ("Induction" IN ('NaturallyAspirated', 'Charged')),
    CONSTRAINT "CK_Components_Kind" CHECK ("Kind" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'propshaft', 'wheels', 'speedometer')),
    CONSTRAINT "CK_Components_Low" CHECK (("LowSi" IS NULL) + ("LowUnit" IS NULL) + ("LowText" IS NULL) + ("LowSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_LowSi" CHECK ("LowSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_LowSource" CHECK ("LowSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Components_OverdriveRatio" CHECK (("OverdriveRatioSi" IS NULL) + ("OverdriveRatioUnit" IS NULL) + ("OverdriveRatioText" IS NULL) + ("OverdriveRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_OverdriveRatioSi" CHECK ("OverdriveRatioSi" BETWEEN 0.4 AND 1.0),
    CONSTRAINT "CK_Components_OverdriveRatioSource" CHECK ("OverdriveRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_OverdriveRing" CHECK ("OverdriveRing" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_OverdriveSun" CHECK ("OverdriveSun" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_OverdriveTeeth" CHECK (("OverdriveRing" IS NULL) + ("OverdriveSun" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_Ownership" CHECK ("Ownership" IN ('Customers', 'Lent', 'CoreOwed', 'Gone')),
    CONSTRAINT "CK_Components_Per" CHECK ("Per" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Components_Pickup" CHECK ("Pickup" IN ('Propshaft', 'GearboxOutput', 'Wheel')),
    CONSTRAINT "CK_Components_Pinion" CHECK ("Pinion" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Components_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Components_Redline" CHECK (("RedlineSi" IS NULL) + ("RedlineUnit" IS NULL) + ("RedlineText" IS NULL) + ("RedlineSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_RedlineSi" CHECK ("RedlineSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_RedlineSource" CHECK ("RedlineSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Ring" CHECK ("Ring" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Seat" CHECK ("Seat" IN ('Cone', 'Ball', 'Flat')),
    CONSTRAINT "CK_Components_SpeedometerTeeth" CHECK (("DriveTeeth" IS NULL) + ("DrivenTeeth" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_StatedCircumference" CHECK (("StatedCircumferenceSi" IS NULL) + ("StatedCircumferenceUnit" IS NULL) + ("StatedCircumferenceText" IS NULL) + ("StatedCircumferenceSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedCircumferenceSi" CHECK ("StatedCircumferenceSi" BETWEEN 0.8 AND 6.0),
    CONSTRAINT "CK_Components_StatedCircumferenceSource" CHECK ("StatedCircumferenceSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_StatedRatio" CHECK (("StatedRatioSi" IS NULL) + ("StatedRatioUnit" IS NULL) + ("StatedRatioText" IS NULL) + ("StatedRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedRatioSi" CHECK ("StatedRatioSi" BETWEEN 1.5 AND 12.0),
    CONSTRAINT "CK_Components_StatedRatioSource" CHECK ("StatedRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Studs" CHECK ("Studs" BETWEEN 3 AND 10),
    CONSTRAINT "CK_Components_Teeth" CHECK (("Ring" IS NULL) + ("Pinion" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_Thread" CHECK (length(trim("Thread")) > 0),
    CONSTRAINT "CK_Components_wheels" CHECK ("Kind" <> 'wheels' OR ("SizeText" IS NOT NULL AND "Construction" IS NOT NULL)),
    CONSTRAINT "CK_Components_Worn" CHECK (("WornSi" IS NULL) + ("WornUnit" IS NULL) + ("WornText" IS NULL) + ("WornSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_WornSi" CHECK ("WornSi" BETWEEN 0.0 AND 0.03),
    CONSTRAINT "CK_Components_WornSource" CHECK ("WornSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_Components_Donors_TakenFromId" FOREIGN KEY ("TakenFromId") REFERENCES "Donors" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Components_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Components VALUES(1,NULL,NULL,NULL,NULL,NULL,NULL,'Wexcombe delivery van, Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.833333333333333925,'Measured','650 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.3 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,76.666666666666671405,'MakersData','4600 rpm','rev/min',NULL,NULL,'CV33-118204','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0BB2-70F7-B338-24769F71E45E',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(2,NULL,NULL,NULL,NULL,NULL,NULL,'came with the engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 four-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-60921','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0BC6-76DC-BE5D-3A841BCFB6F2',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(3,NULL,NULL,NULL,NULL,NULL,NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle, the frame''s own','Pinion chipped on two teeth; whines from 70 km/h.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13,NULL,NULL,NULL,NULL,NULL,NULL,43,NULL,'HR-3-0077','under the bench, left',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0BE2-7FBE-B5C2-9A2225594B2E',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(4,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, row 6, no vehicle with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow yard axle','Cover and tag look newer than the housing.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-7-4410','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,'01A22102-0BEA-7177-9ECF-82D4BBD9947E',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(5,NULL,NULL,NULL,NULL,'Radial',NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 205/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','205/75R15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0BF2-7265-9ACB-746AB5C1F49D',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(6,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 235/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','235/75R15 105S',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-0BFD-7275-81FA-15F8DA3D1E3E',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(7,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12.5,'Measured','750 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,86.666666666666671405,'OwnersWord','5200 rpm','rev/min',NULL,NULL,'CV21-7715','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1552-7572-AA27-EEF376057F7A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(8,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 light','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4L-1123','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1556-7A89-9F84-863E0DA3C5D8',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(9,NULL,NULL,NULL,NULL,NULL,NULL,'swap meet at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'overdrive',NULL,NULL,NULL,NULL,'Delmere step-up unit','',0.78000000000000002664,'MakersData','0.78','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'SU-338','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1558-781A-B2B4-7631727D652C',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(10,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, short','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-209','rack B, bottom',NULL,NULL,NULL,NULL,NULL,4.2999999999999998223,'OwnersWord','4.3','',NULL,NULL,NULL,NULL,NULL,'01A22102-1562-7333-BB56-C95260B8522A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(11,NULL,NULL,NULL,NULL,NULL,NULL,'saloon wreck at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, long','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-311','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,'01A22102-1566-763B-BE49-90AFE659FAB6',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(12,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'propshaft',NULL,NULL,NULL,NULL,'Ottery''s own propshaft','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1576-7B85-B121-0C897BDACAAD',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(13,NULL,NULL,NULL,NULL,'Bias',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn 165/80-15 on wires','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','165/80-15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-158A-7BC0-8DD8-E4EA34A45180',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(14,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13.333333333333333925,'MakersData','800 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.3 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,96.666666666666671405,'MakersData','5800 rpm','rev/min',NULL,NULL,'CV23-90411','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-16D2-7B00-A31A-68A8696964FA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(15,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4, Tansy''s own','Jumps out of second.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-33870','rack A, top',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-16F0-7F48-A1F7-0BCE2C6F1573',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(16,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, from a late saloon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D5 five-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D5-00214','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-16FA-720B-B33A-E9CDB978D5EA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(17,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle 41/11','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-5-2218','',NULL,NULL,NULL,NULL,NULL,3.7299999999999999822,'Tag','3.73','',NULL,NULL,NULL,NULL,NULL,'01A22102-16FE-7D58-A542-9A2E5FC1F535',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(18,NULL,NULL,NULL,NULL,'Radial',NULL,'came with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/60R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','loft','185/60R15 84H',1.8400000000000000799,'MakersData','1.84 m','m',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1706-7407-8A9C-543625C5F0EA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(19,NULL,NULL,NULL,NULL,NULL,NULL,'its own',6,22,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'speedometer',NULL,NULL,NULL,NULL,'Tansy''s own speedometer','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'Miles',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-170A-7EB1-A70B-5316CDE58D09',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(20,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 195/65R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','195/65R15 91H',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1716-7EB2-964B-058A0A6864FB',0,0.0020000000000000000416,'Measured','2 mm','mm');
INSERT INTO Components VALUES(21,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11.666666666666666074,'OwnersWord','700 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.7 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,100.0,'MakersData','6000 rpm','rev/min',NULL,NULL,'CV27-40032','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1866-75EE-B60A-F733308DBBD6',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(22,NULL,NULL,NULL,NULL,NULL,NULL,'Bastian''s shelf',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 close-ratio','The clutch disc came with the engine.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4C-511','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-186A-773F-A5B7-9076A9C191A3',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(23,NULL,NULL,NULL,NULL,NULL,NULL,'unknown, bought with the shell',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow narrow axle','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-N-0815','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-186E-70DF-BEBB-22CB743C6F0C',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(24,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/70R14 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','185/70R14 88T',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1872-7C55-8372-F6C850C0F49A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(25,NULL,NULL,NULL,NULL,NULL,NULL,'ground-power set, Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.0,'Measured','600 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.9 diesel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,60.0,'MakersData','3600 rpm','rev/min',NULL,NULL,'CVD39-2260','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1911-705A-953A-97C7839C32B9',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(26,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 heavy','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4H-902','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-191E-774B-AA5E-051743CA114B',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(27,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,'Declutch',NULL,1.0,'MakersData','1.00','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transfer case',2.3199999999999998401,'MakersData','2.32','','Marlow M2 transfer case','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'M2-4451','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1922-7A7E-ADD5-A2A7B1619919',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(28,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-H-120','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1932-7614-8E1B-3A03D12E7F65',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(29,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-HF-121','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-193A-73F9-B547-464603732A98',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(30,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-H-388','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1942-7C46-901F-636FFED1BB0A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(31,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-HF-389','',NULL,NULL,NULL,NULL,NULL,4.0999999999999996447,'Tag','4.10','',NULL,NULL,NULL,NULL,NULL,'01A22102-1946-751B-9599-751F3D7F7077',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(32,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn LT235/85R16 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','LT235/85R16 120/116Q',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-194A-7E52-A9B2-48D4FBF61D88',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(33,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four, van''s own','Turns over by hand.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1A5E-724F-85F3-CAF4A375DD7C',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(34,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 column-shift','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1A6E-7D1C-B4A4-1A99588E1E61',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(35,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'van''s own axle, no tag','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A22102-1A76-70DD-9E62-EC8DFDC5D66B',0,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "PlannedWishes" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlannedWishes" PRIMARY KEY AUTOINCREMENT,
    "PlanId" INTEGER NOT NULL,
    "Typed" TEXT NOT NULL,
    "Wish" TEXT NOT NULL,
    CONSTRAINT "CK_PlannedWishes_Typed" CHECK (length(trim("Typed")) > 0),
    CONSTRAINT "CK_PlannedWishes_Wish" CHECK ("Wish" IN ('Mass', 'DrivenShare', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'FrontPad', 'RearSprings', 'RearPad', 'Cruise', 'Hill', 'TopSpeed', 'HillStart', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')),
    CONSTRAINT "FK_PlannedWishes_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id")
) STRICT;
CREATE TABLE IF NOT EXISTS "WantedParts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedParts" PRIMARY KEY AUTOINCREMENT,
    "Deadline" TEXT NULL,
    "DroppedFor" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "MostCurrency" TEXT NULL,
    "MostMinor" INTEGER NULL,
    "Notes" TEXT NOT NULL,
    "PlanId" INTEGER NULL,
    "State" TEXT NOT NULL,
    "Title" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_WantedParts_Deadline" CHECK ("Deadline" IS date("Deadline")),
    CONSTRAINT "CK_WantedParts_Dropped" CHECK ("State" <> 'Dropped' OR length(trim("DroppedFor")) > 0),
    CONSTRAINT "CK_WantedParts_Kind" CHECK ("Kind" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'Axle', 'Tyres', 'Wheels', 'Speedometer', 'Other')),
    CONSTRAINT "CK_WantedParts_Most" CHECK (("MostMinor" IS NULL) + ("MostCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_WantedParts_MostCurrency" CHECK ("MostCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_WantedParts_MostMinor" CHECK ("MostMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_WantedParts_State" CHECK ("State" IN ('Hunting', 'Found', 'Dropped')),
    CONSTRAINT "CK_WantedParts_Title" CHECK (length(trim("Title")) > 0),
    CONSTRAINT "FK_WantedParts_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_WantedParts_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO WantedParts VALUES(1,NULL,'','Axle','EUR',35000,'',NULL,'Hunting','longer axle','01A22102-1416-7AF3-8ECE-F4221AF85D58',1,0);
CREATE VIRTUAL TABLE "FindableText" USING fts5("Title", "About", "Body", content='Findables', content_rowid='Id', tokenize='unicode61 remove_diacritics 2', prefix='1 2 3');
CREATE VIRTUAL TABLE "FindableTerms" USING fts5vocab('FindableText', 'instance');
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('Vehicles',6);
INSERT INTO sqlite_sequence VALUES('Goals',6);
INSERT INTO sqlite_sequence VALUES('Attachments',3);
INSERT INTO sqlite_sequence VALUES('Specs',20);
INSERT INTO sqlite_sequence VALUES('PlannedChanges',0);
INSERT INTO sqlite_sequence VALUES('Fitments',36);
INSERT INTO sqlite_sequence VALUES('Sessions',12);
INSERT INTO sqlite_sequence VALUES('Components',35);
INSERT INTO sqlite_sequence VALUES('PlannedWishes',0);
INSERT INTO sqlite_sequence VALUES('WantedParts',1);
INSERT INTO sqlite_sequence VALUES('Workshops',1);
INSERT INTO sqlite_sequence VALUES('ChangeSets',126);
INSERT INTO sqlite_sequence VALUES('Changes',283);
INSERT INTO sqlite_sequence VALUES('Findables',133);
INSERT INTO sqlite_sequence VALUES('Suppliers',2);
INSERT INTO sqlite_sequence VALUES('Notes',2);
INSERT INTO sqlite_sequence VALUES('Donors',1);
INSERT INTO sqlite_sequence VALUES('DonorPieces',3);
INSERT INTO sqlite_sequence VALUES('Traits',70);
INSERT INTO sqlite_sequence VALUES('Gears',29);
INSERT INTO sqlite_sequence VALUES('Readings',29);
INSERT INTO sqlite_sequence VALUES('RoadTests',2);
INSERT INTO sqlite_sequence VALUES('WantedWindows',1);
INSERT INTO sqlite_sequence VALUES('Offers',2);
INSERT INTO sqlite_sequence VALUES('Jobs',4);
INSERT INTO sqlite_sequence VALUES('WorkEntries',3);
INSERT INTO sqlite_sequence VALUES('Costs',4);
INSERT INTO sqlite_sequence VALUES('Deadlines',1);
INSERT INTO sqlite_sequence VALUES('Decisions',1);
INSERT INTO sqlite_sequence VALUES('ShaftPieces',1);
INSERT INTO sqlite_sequence VALUES('OutsideWorks',1);
CREATE UNIQUE INDEX "IX_Gears_TransmissionId_Ordinal" ON "Gears" ("TransmissionId", "Ordinal");
CREATE UNIQUE INDEX "IX_Readings_SessionId_Ordinal" ON "Readings" ("SessionId", "Ordinal");
CREATE UNIQUE INDEX "IX_ShaftPieces_PropshaftId_Ordinal" ON "ShaftPieces" ("PropshaftId", "Ordinal");
CREATE UNIQUE INDEX "IX_Vehicles_NameKey" ON "Vehicles" ("NameKey");
CREATE UNIQUE INDEX "IX_Vehicles_Uid" ON "Vehicles" ("Uid");
CREATE INDEX "IX_Costs_ComponentId" ON "Costs" ("ComponentId");
CREATE INDEX "IX_Costs_JobId" ON "Costs" ("JobId");
CREATE INDEX "IX_Costs_ReceiptId" ON "Costs" ("ReceiptId");
CREATE INDEX "IX_Costs_SupplierId" ON "Costs" ("SupplierId");
CREATE UNIQUE INDEX "IX_Costs_Uid" ON "Costs" ("Uid");
CREATE INDEX "IX_Costs_VehicleId_Date" ON "Costs" ("VehicleId", "Date");
CREATE INDEX "IX_Deadlines_Day" ON "Deadlines" ("Day");
CREATE UNIQUE INDEX "IX_Deadlines_Uid" ON "Deadlines" ("Uid");
CREATE INDEX "IX_Deadlines_VehicleId" ON "Deadlines" ("VehicleId");
CREATE UNIQUE INDEX "IX_Decisions_Uid" ON "Decisions" ("Uid");
CREATE INDEX "IX_Decisions_VehicleId_Date" ON "Decisions" ("VehicleId", "Date");
CREATE INDEX "IX_DonorPieces_ComponentId" ON "DonorPieces" ("ComponentId");
CREATE INDEX "IX_DonorPieces_DonorId" ON "DonorPieces" ("DonorId");
CREATE UNIQUE INDEX "IX_DonorPieces_Uid" ON "DonorPieces" ("Uid");
CREATE INDEX "IX_Donors_SellerId" ON "Donors" ("SellerId");
CREATE UNIQUE INDEX "IX_Donors_Uid" ON "Donors" ("Uid");
CREATE INDEX "IX_IdentityNumbers_ComponentId" ON "IdentityNumbers" ("ComponentId");
CREATE UNIQUE INDEX "IX_IdentityNumbers_Uid" ON "IdentityNumbers" ("Uid");
CREATE INDEX "IX_IdentityNumbers_VehicleId" ON "IdentityNumbers" ("VehicleId");
CREATE UNIQUE INDEX "IX_Jobs_Uid" ON "Jobs" ("Uid");
CREATE INDEX "IX_Jobs_VehicleId" ON "Jobs" ("VehicleId");
CREATE INDEX "IX_Jobs_WaitsForId" ON "Jobs" ("WaitsForId");
CREATE INDEX "IX_Notes_AboutUid_Date" ON "Notes" ("AboutUid", "Date");
CREATE UNIQUE INDEX "IX_Notes_Uid" ON "Notes" ("Uid");
CREATE INDEX "IX_OdometerChanges_Day_Order" ON "OdometerChanges" ("Day", "Order");
CREATE UNIQUE INDEX "IX_OdometerChanges_Uid" ON "OdometerChanges" ("Uid");
CREATE INDEX "IX_OdometerChanges_VehicleId" ON "OdometerChanges" ("VehicleId");
CREATE INDEX "IX_Offers_SupplierId" ON "Offers" ("SupplierId");
CREATE UNIQUE INDEX "IX_Offers_Uid" ON "Offers" ("Uid");
CREATE INDEX "IX_Offers_WantedPartId" ON "Offers" ("WantedPartId");
CREATE INDEX "IX_OutsideWorks_JobId" ON "OutsideWorks" ("JobId");
CREATE INDEX "IX_OutsideWorks_SupplierId" ON "OutsideWorks" ("SupplierId");
CREATE UNIQUE INDEX "IX_OutsideWorks_Uid" ON "OutsideWorks" ("Uid");
CREATE UNIQUE INDEX "IX_Plans_Uid" ON "Plans" ("Uid");
CREATE INDEX "IX_Plans_VehicleId" ON "Plans" ("VehicleId");
CREATE UNIQUE INDEX "IX_Retorques_Uid" ON "Retorques" ("Uid");
CREATE INDEX "IX_Retorques_VehicleId" ON "Retorques" ("VehicleId");
CREATE UNIQUE INDEX "IX_RoadTests_Uid" ON "RoadTests" ("Uid");
CREATE INDEX "IX_RoadTests_VehicleId_Date" ON "RoadTests" ("VehicleId", "Date");
CREATE UNIQUE INDEX "IX_Suppliers_Uid" ON "Suppliers" ("Uid");
CREATE UNIQUE INDEX "IX_Traits_ComponentId_Trait" ON "Traits" ("ComponentId", "Trait");
CREATE UNIQUE INDEX "IX_WantedMustHaves_WantedPartId_Ordinal" ON "WantedMustHaves" ("WantedPartId", "Ordinal");
CREATE UNIQUE INDEX "IX_WantedWindows_WantedPartId_Ordinal" ON "WantedWindows" ("WantedPartId", "Ordinal");
CREATE INDEX "IX_WorkEntries_JobId_Date" ON "WorkEntries" ("JobId", "Date");
CREATE UNIQUE INDEX "IX_WorkEntries_Uid" ON "WorkEntries" ("Uid");
CREATE UNIQUE INDEX "IX_Workshops_Uid" ON "Workshops" ("Uid");
CREATE UNIQUE INDEX "IX_Goals_OneBudget" ON "Goals" ("VehicleId") WHERE "Kind" = 'budget';
CREATE UNIQUE INDEX "IX_Goals_OneHill" ON "Goals" ("VehicleId") WHERE "Kind" = 'hill';
CREATE UNIQUE INDEX "IX_Goals_OneLimitOfEach" ON "Goals" ("VehicleId", "Limited");
CREATE UNIQUE INDEX "IX_Goals_Uid" ON "Goals" ("Uid");
CREATE INDEX "IX_Goals_VehicleId" ON "Goals" ("VehicleId");
CREATE INDEX "IX_Changes_ChangeSetId" ON "Changes" ("ChangeSetId");
CREATE INDEX "IX_Changes_RecordUid" ON "Changes" ("RecordUid");
CREATE INDEX "IX_Changes_TableName_RowId" ON "Changes" ("TableName", "RowId");
CREATE INDEX "IX_Changes_VehicleId" ON "Changes" ("VehicleId");
CREATE UNIQUE INDEX "IX_ChangeSets_UndoesId" ON "ChangeSets" ("UndoesId");
CREATE INDEX "IX_Findables_ComponentId" ON "Findables" ("ComponentId");
CREATE UNIQUE INDEX "IX_Findables_RecordUid" ON "Findables" ("RecordUid");
CREATE INDEX "IX_Findables_VehicleId" ON "Findables" ("VehicleId");
CREATE INDEX "IX_ChangeSets_Step" ON "ChangeSets" ("Step") WHERE "Step" = 'Undo';
CREATE INDEX "IX_Attachments_AboutUid" ON "Attachments" ("AboutUid");
CREATE INDEX "IX_Attachments_Sha256" ON "Attachments" ("Sha256");
CREATE UNIQUE INDEX "IX_Attachments_Uid" ON "Attachments" ("Uid");
CREATE UNIQUE INDEX "IX_Specs_ComponentId_Spec" ON "Specs" ("ComponentId", "Spec");
CREATE UNIQUE INDEX "IX_Specs_VehicleId_Spec" ON "Specs" ("VehicleId", "Spec");
CREATE INDEX "IX_PlannedChanges_ComponentId" ON "PlannedChanges" ("ComponentId");
CREATE UNIQUE INDEX "IX_PlannedChanges_PlanId_Position" ON "PlannedChanges" ("PlanId", "Position");
CREATE INDEX "IX_Fitments_ComponentId_FromDate" ON "Fitments" ("ComponentId", "FromDate");
CREATE INDEX "IX_Fitments_FromDate_FromOrder" ON "Fitments" ("FromDate", "FromOrder");
CREATE UNIQUE INDEX "IX_Fitments_OnePartAtATime" ON "Fitments" ("VehicleId", "Position") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_OnePlaceAtATime" ON "Fitments" ("ComponentId") WHERE "ToDate" IS NULL;
CREATE INDEX "IX_Fitments_ToDate_ToOrder" ON "Fitments" ("ToDate", "ToOrder");
CREATE UNIQUE INDEX "IX_Fitments_Uid" ON "Fitments" ("Uid");
CREATE INDEX "IX_Fitments_VehicleId_FromDate" ON "Fitments" ("VehicleId", "FromDate");
CREATE INDEX "IX_Sessions_ComponentId_Date" ON "Sessions" ("ComponentId", "Date");
CREATE UNIQUE INDEX "IX_Sessions_Uid" ON "Sessions" ("Uid");
CREATE INDEX "IX_Sessions_VehicleId_ComponentId_Date" ON "Sessions" ("VehicleId", "ComponentId", "Date");
CREATE INDEX "IX_Components_SupplierId" ON "Components" ("SupplierId");
CREATE INDEX "IX_Components_TakenFromId" ON "Components" ("TakenFromId");
CREATE UNIQUE INDEX "IX_Components_Uid" ON "Components" ("Uid");
CREATE UNIQUE INDEX "IX_PlannedWishes_PlanId_Wish" ON "PlannedWishes" ("PlanId", "Wish");
CREATE INDEX "IX_WantedParts_PlanId" ON "WantedParts" ("PlanId");
CREATE UNIQUE INDEX "IX_WantedParts_Uid" ON "WantedParts" ("Uid");
CREATE INDEX "IX_WantedParts_VehicleId" ON "WantedParts" ("VehicleId");
CREATE TRIGGER "Fitments_Insert_NoOverlap" BEFORE INSERT ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
CREATE TRIGGER "Fitments_Update_NoOverlap" BEFORE UPDATE ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
CREATE TRIGGER "ChangeSets_UPDATE_Never" BEFORE UPDATE ON "ChangeSets"
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the log of changes is only ever added to.');
END;
CREATE TRIGGER "ChangeSets_DELETE_Never" BEFORE DELETE ON "ChangeSets"
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the log of changes is only ever added to.');
END;
CREATE TRIGGER "Changes_UPDATE_Never" BEFORE UPDATE ON "Changes"
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the log of changes is only ever added to.');
END;
CREATE TRIGGER "Changes_DELETE_Never" BEFORE DELETE ON "Changes"
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the log of changes is only ever added to.');
END;
CREATE TRIGGER "Findables_Insert_Text" AFTER INSERT ON "Findables"
BEGIN
    INSERT INTO "FindableText" (rowid, "Title", "About", "Body") VALUES (NEW."Id", NEW."Title", NEW."About", NEW."Body");
END;
CREATE TRIGGER "Findables_Delete_Text" AFTER DELETE ON "Findables"
BEGIN
    INSERT INTO "FindableText" ("FindableText", rowid, "Title", "About", "Body") VALUES ('delete', OLD."Id", OLD."Title", OLD."About", OLD."Body");
END;
CREATE TRIGGER "Findables_Update_Text" AFTER UPDATE OF "Title", "About", "Body" ON "Findables"
BEGIN
    INSERT INTO "FindableText" ("FindableText", rowid, "Title", "About", "Body") VALUES ('delete', OLD."Id", OLD."Title", OLD."About", OLD."Body");
    INSERT INTO "FindableText" (rowid, "Title", "About", "Body") VALUES (NEW."Id", NEW."Title", NEW."About", NEW."Body");
END;
INSERT INTO "FindableText" ("FindableText") VALUES ('rebuild');
COMMIT;
